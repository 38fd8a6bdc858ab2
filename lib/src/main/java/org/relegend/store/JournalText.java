package org.relegend.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Lines of the journal as bytes: one JSON document each, with a line feed behind it. */
final class JournalText {
  /** Raised together with any change that older programs would misread. */
  private static final int FORMAT = 1;

  private static final JsonFactory JSON =
      new JsonFactoryBuilder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(200).maxNumberLength(100).build())
          .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
          .build();

  /**
   * The first line.
   *
   * @param follows digest of the map file that the journal's edits start from
   */
  record Head(int format, String follows) {
    Head {
      if (format != FORMAT) {
        throw new IllegalArgumentException("journals of format " + format + " are not known");
      }
    }

    Head(String follows) {
      this(FORMAT, follows);
    }
  }

  private static final Codec<Head> HEAD = head();

  private JournalText() {}

  private static Codec<Head> head() {
    JsonShape<Head> s = new JsonShape<>();
    var format = s.required("journal", Codecs.WHOLE_NUMBER, Head::format);
    var follows = s.required("follows", Codecs.TEXT, Head::follows);
    return s.madeBy(v -> new Head(v.get(format), v.get(follows)));
  }

  static byte[] write(Head head) {
    return write(HEAD, head);
  }

  static byte[] write(JournalLine line) {
    return write(JournalLine.CODEC, line);
  }

  private static <T> byte[] write(Codec<T> codec, T value) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = JSON.createGenerator(bytes)) {
      codec.write(value, out);
      out.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return bytes.toByteArray();
  }

  static Head head(byte[] bytes, int from, int end) throws IOException {
    return read(HEAD, bytes, from, end);
  }

  static JournalLine line(byte[] bytes, int from, int end) throws IOException {
    return read(JournalLine.CODEC, bytes, from, end);
  }

  private static <T> T read(Codec<T> codec, byte[] bytes, int from, int end) throws IOException {
    try (JsonParser in = JSON.createParser(bytes, from, end - from)) {
      in.nextToken();
      T value = codec.read(in);
      if (in.nextToken() != null) {
        throw UnfitJsonException.here(in, "nothing more may follow in a line");
      }
      return value;
    }
  }
}
