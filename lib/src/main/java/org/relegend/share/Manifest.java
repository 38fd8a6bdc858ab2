package org.relegend.share;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.relegend.store.Json;

/** The first file of a pack: what else is in it, with sizes and SHA-256 digests. */
record Manifest(String map, List<Entry> files) {
  static final String NAME = "manifest.json";
  static final int FORMAT = 1;
  private static final String KIND = "relegend-pack";

  /** One file of the pack. */
  record Entry(String path, long size, String sha256) {}

  Manifest {
    files = List.copyOf(files);
  }

  byte[] bytes() {
    return Json.object()
        .put("format", FORMAT)
        .put("kind", KIND)
        .put("map", map)
        .put(
            "files",
            Json.array(
                files,
                file ->
                    Json.object()
                        .put("path", file.path())
                        .put("size", file.size())
                        .put("sha256", file.sha256())))
        .toText()
        .getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Reads it.
   *
   * @throws IllegalArgumentException where it is none, told for the user
   */
  static Manifest parse(byte[] bytes) {
    Map<String, Json> fields = object(Json.parse(new String(bytes, StandardCharsets.UTF_8)));
    require(fields, Set.of("format", "kind", "map", "files"));
    if (!Json.of(KIND).equals(fields.get("kind"))) {
      throw new IllegalArgumentException("this is no pack of a board map");
    }
    if (!(fields.get("format") instanceof Json.Whole format)) {
      throw new IllegalArgumentException("the format of the pack isn't told");
    }
    if (format.value() > FORMAT) {
      throw new IllegalArgumentException(
          "the pack has format %d, and this version knows formats up to %d: use a newer version"
              .formatted(format.value(), FORMAT));
    }
    if (format.value() != FORMAT || !(fields.get("files") instanceof Json.Arr list)) {
      throw new IllegalArgumentException("there is no such format of a pack");
    }
    List<Entry> files = new ArrayList<>();
    for (Json file : list.values()) {
      Map<String, Json> entry = object(file);
      require(entry, Set.of("path", "size", "sha256"));
      if (!(entry.get("size") instanceof Json.Whole size)) {
        throw new IllegalArgumentException("a size in the manifest is no whole number");
      }
      files.add(new Entry(text(entry, "path"), size.value(), text(entry, "sha256")));
    }
    return new Manifest(text(fields, "map"), files);
  }

  private static Map<String, Json> object(Json json) {
    if (json instanceof Json.Obj object) {
      return object.fields();
    }
    throw new IllegalArgumentException("the manifest isn't what it should be");
  }

  private static void require(Map<String, Json> fields, Set<String> names) {
    if (!fields.keySet().equals(names)) {
      throw new IllegalArgumentException("the manifest has other fields than it should");
    }
  }

  private static String text(Map<String, Json> fields, String name) {
    if (fields.get(name) instanceof Json.Text text) {
      return text.value();
    }
    throw new IllegalArgumentException("\"" + name + "\" in the manifest is no text");
  }
}
