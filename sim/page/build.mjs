// Builds the page into the package. The same sources give the same bytes: no source maps, no
// dates, no absolute paths, and exact versions of the few tools in package.json.
import { createHash } from "node:crypto";
import { copyFileSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const out = process.argv[2] ?? join(here, "..", "crossfall", "app", "static");
mkdirSync(out, { recursive: true });

await build({
  absWorkingDir: here,
  entryPoints: ["src/main.ts"],
  outfile: join(out, "bench.js"),
  bundle: true,
  minify: true,
  format: "esm",
  target: "es2022",
  charset: "utf8",
  legalComments: "inline",
  logLevel: "warning",
});
for (const name of ["index.html", "bench.css", "icon.svg"]) copyFileSync(join(here, name), join(out, name));

// What the bundle was built from, so that a check without Node can tell when it is out of date.
const names = ["build.mjs", "package.json", "tsconfig.json", "index.html", "bench.css", "icon.svg"];
names.push(...readdirSync(join(here, "src")).sort().map((n) => `src/${n}`));
const lines = names.map((n) => `${createHash("sha256").update(readFileSync(join(here, n))).digest("hex")}  ${n}`);
writeFileSync(join(out, "built-from.txt"), lines.join("\n") + "\n");
