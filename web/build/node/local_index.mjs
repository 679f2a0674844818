// A package index on the loopback, so that nothing is resolved against a network.
import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";

const normalise = (name) => name.toLowerCase().replace(/[-_.]+/g, "-");

/** Serves the wheels of `folder` (PEP 691 JSON); gives the index pattern and a way to close it. */
export async function serveWheels(folder) {
  const wheels = readdirSync(folder).filter((name) => name.endsWith(".whl"));
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url, "http://127.0.0.1").pathname);
    const [kind, name] = path.split("/").filter(Boolean);
    if (kind === "files" && wheels.includes(name)) {
      response.setHeader("content-type", "application/octet-stream");
      response.end(readFileSync(join(folder, name)));
      return;
    }
    const files = wheels.filter(
      (wheel) => normalise(wheel.split("-")[0]) === normalise(name ?? ""),
    );
    response.statusCode = files.length > 0 ? 200 : 404;
    response.setHeader("content-type", "application/vnd.pypi.simple.v1+json");
    response.end(
      JSON.stringify({
        meta: { "api-version": "1.0" },
        name,
        files: files.map((filename) => ({
          filename,
          url: `http://127.0.0.1:${server.address().port}/files/${filename}`,
          hashes: {
            sha256: createHash("sha256")
              .update(readFileSync(join(folder, filename)))
              .digest("hex"),
          },
        })),
      }),
    );
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    pattern: `http://127.0.0.1:${server.address().port}/simple/{package_name}/`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
