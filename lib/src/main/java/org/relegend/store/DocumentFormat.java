package org.relegend.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.relegend.store.StoreException.Kind;

/**
 * The text of one sort of document: UTF-8, line feeds, one order of fields and entities, so that
 * equal documents give equal bytes. The first field, {@code format}, counts the form of the file.
 *
 * @param title what such a document is called: "board map"
 * @param word the same in short: "map"
 * @param file its name in its folder
 * @param current the newest form; all from 1 up to it are read
 */
record DocumentFormat<T>(String title, String word, String file, int current, Codec<T> codec) {
  /** Bytes of the largest document that is read: some forty times a map of 10,000 parts. */
  static final int MAX_BYTES = 256 << 20;

  private static final JsonFactory JSON =
      new JsonFactoryBuilder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(20)
                  .maxStringLength(200_000)
                  .maxNameLength(1_000)
                  .maxNumberLength(100)
                  .build())
          .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
          .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
          .build();

  /** The document as the bytes of its file. */
  byte[] write(T document) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
    try (JsonGenerator out = JSON.createGenerator(bytes)) {
      out.setPrettyPrinter(new MapPrinter());
      codec.write(document, out);
      out.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return bytes.toByteArray();
  }

  /** The JSON Schema (2020-12) of a form, which lies beside this class. */
  static String schema(String name) {
    try (InputStream in = DocumentFormat.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name + " of the program", e);
    }
  }

  /**
   * Reads a document.
   *
   * @param path where the bytes are from, for messages
   * @throws StoreException where this is no such document, or one of a newer form
   */
  T read(byte[] bytes, Path path) throws StoreException {
    requireText(bytes, path);
    try {
      requireKnownFormat(bytes, path);
      try (JsonParser in = JSON.createParser(bytes)) {
        in.nextToken();
        T document = codec.read(in);
        if (in.nextToken() != null) {
          throw UnfitJsonException.here(in, "nothing more may follow after the " + word);
        }
        return document;
      }
    } catch (IOException e) {
      throw JsonErrors.exception(e, path, "Restore the file from a copy, or mend it there");
    }
  }

  private void requireText(byte[] bytes, Path path) throws StoreException {
    int at = startsWithMark(bytes) ? 3 : 0;
    while (at < bytes.length && Character.isWhitespace(bytes[at])) {
      at++;
    }
    if (at == bytes.length) {
      throw new StoreException(
          Kind.BAD_CONTENT, path, "the file is empty. Restore it from a copy.");
    }
    boolean wide = bytes.length > at + 1 && bytes[at + 1] == 0;
    if (bytes[at] != '{' || wide) {
      throw new StoreException(
          Kind.BAD_CONTENT,
          path,
          "this is no %s: it should be JSON text in UTF-8 that begins with \"{\". Restore it from a copy."
              .formatted(title));
    }
  }

  private static boolean startsWithMark(byte[] bytes) {
    return bytes.length >= 3
        && bytes[0] == (byte) 0xEF
        && bytes[1] == (byte) 0xBB
        && bytes[2] == (byte) 0xBF;
  }

  /** Looks at the format before all else, as the rest of a newer file may be of any shape. */
  private void requireKnownFormat(byte[] bytes, Path path) throws IOException, StoreException {
    try (JsonParser in = JSON.createParser(bytes)) {
      in.nextToken();
      for (String name = in.nextFieldName(); name != null; name = in.nextFieldName()) {
        JsonToken value = in.nextToken();
        if (name.equals("format")) {
          requireKnown(in, value, path);
          return;
        }
        in.skipChildren();
      }
      throw UnfitJsonException.here(
          in, "the field \"format\" is missing, so this is no %s of this program".formatted(title));
    }
  }

  private void requireKnown(JsonParser in, JsonToken value, Path path)
      throws IOException, StoreException {
    boolean whole = value == JsonToken.VALUE_NUMBER_INT;
    if (whole && in.getDoubleValue() > current) {
      throw new StoreException(
          Kind.NEWER_FORMAT,
          path,
          "the file has format %s, and this version of Relegend knows formats up to %d. It is left untouched; open it with a newer version."
              .formatted(in.getText(), current));
    }
    if (!whole || in.getDoubleValue() < 1) {
      throw UnfitJsonException.here(
          in, "there is no such format; this version knows those up to " + current);
    }
  }
}
