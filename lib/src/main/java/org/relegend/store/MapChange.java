package org.relegend.store;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.relegend.map.BoardMap;
import org.relegend.map.Keyed;
import org.relegend.map.MapInfo;
import org.relegend.map.NameRules;

/**
 * What differs between two versions of one map, entity by entity: for the journal, where a step
 * can't be told as an edit, as an undo that reaches back beyond the last save.
 */
final class MapChange {
  private static final String INFO = "info";

  static final Codec<MapChange> CODEC =
      new Codec<>() {
        @Override
        public MapChange read(JsonParser in) throws IOException {
          if (in.currentToken() != JsonToken.START_OBJECT) {
            throw UnfitJsonException.here(in, "a change in braces { } must stand here");
          }
          List<Piece> pieces = new ArrayList<>();
          for (String name = in.nextFieldName(); name != null; name = in.nextFieldName()) {
            in.nextToken();
            pieces.add(name.equals(INFO) ? info(MapShapes.INFO.read(in)) : table(name, in));
          }
          return new MapChange(pieces);
        }

        @Override
        public void write(MapChange change, JsonGenerator out) throws IOException {
          out.writeStartObject();
          for (Piece piece : change.pieces) {
            out.writeFieldName(piece.name);
            piece.writer.write(out);
          }
          out.writeEndObject();
        }
      };

  /** Writes the value of one piece. */
  private interface Writer {
    void write(JsonGenerator out) throws IOException;
  }

  /** What changed of one table, or of the title page. */
  private record Piece(String name, UnaryOperator<BoardMap> made, Writer writer) {}

  private final List<Piece> pieces;

  private MapChange(List<Piece> pieces) {
    this.pieces = List.copyOf(pieces);
  }

  /** What leads from one map to another. */
  static MapChange between(BoardMap before, BoardMap after) {
    List<Piece> pieces = new ArrayList<>();
    if (!before.info().equals(after.info())) {
      pieces.add(info(after.info()));
    }
    for (TableCodec<?, ?> table : MapTableCodecs.ALL) {
      between(table, before, after).ifPresent(pieces::add);
    }
    return new MapChange(pieces);
  }

  boolean none() {
    return pieces.isEmpty();
  }

  BoardMap applyTo(BoardMap map) {
    BoardMap result = map;
    for (Piece piece : pieces) {
      result = piece.made.apply(result);
    }
    return result;
  }

  private static Piece info(MapInfo info) {
    return new Piece(INFO, map -> map.withInfo(info), out -> MapShapes.INFO.write(info, out));
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> Optional<Piece> between(
      TableCodec<K, V> table, BoardMap before, BoardMap after) {
    TableCodec.Change<K, V> change = table.between(before, after);
    return change.none() ? Optional.empty() : Optional.of(piece(table, change));
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> Piece piece(
      TableCodec<K, V> table, TableCodec.Change<K, V> change) {
    return new Piece(table.name(), table.made(change), out -> table.codec().write(change, out));
  }

  private static Piece table(String name, JsonParser in) throws IOException {
    for (TableCodec<?, ?> table : MapTableCodecs.ALL) {
      if (table.name().equals(name)) {
        return read(table, in);
      }
    }
    throw UnfitJsonException.here(
        in, "the field \"" + NameRules.printable(name) + "\" is not known");
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> Piece read(
      TableCodec<K, V> table, JsonParser in) throws IOException {
    return piece(table, table.codec().read(in));
  }
}
