/** Reads a built tables.json as a program outside this project would. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';

const cell = z.union([z.number(), z.boolean(), z.null()]);

const tablesFile = z.object({
  kit: z.string(),
  edition: z.string(),
  engine: z.string().regex(/^\d+\.\d+\.\d+/),
  room: z.object({ title: z.string(), elevation: z.number().nullable(), pressure: z.number(), temperature: z.number(), relativeHumidity: z.number().min(0).max(1) }),
  tables: z.array(
    z.object({
      id: z.string(),
      kind: z.string(),
      sheet: z.string(),
      columns: z.array(z.object({ key: z.string(), unit: z.string() })),
      rows: z.array(z.array(cell)),
    }),
  ),
});

export type TablesFile = z.infer<typeof tablesFile>;
export type TableData = TablesFile['tables'][number];

/** The file of a kit's draft in a built folder. Throws if a promised field is missing or of another type. */
export const tablesOf = (folder: string, kit: string): TablesFile => tablesFile.parse(JSON.parse(readFileSync(join(folder, 'kits', kit, 'draft', 'tables.json'), 'utf8')));

/** The first table of a kind. */
export function tableOf(file: TablesFile, kind: string): TableData {
  const found = file.tables.find((table) => table.kind === kind);
  if (found === undefined) throw new Error(`${file.kit} has no table of kind ${kind}.`);
  return found;
}

/** A column of numbers. Throws where a cell is not a number. */
export const columnOf = (table: TableData, key: string): number[] => {
  const at = table.columns.findIndex((column) => column.key === key);
  if (at < 0) throw new Error(`${table.kind} has no column ${key}.`);
  return table.rows.map((row) => z.number().parse(row[at]));
};
