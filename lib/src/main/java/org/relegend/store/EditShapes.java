package org.relegend.store;

import static org.relegend.store.Codecs.TEXT;
import static org.relegend.store.Codecs.list;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.relegend.map.ChangeInfo;
import org.relegend.map.ConfirmPlacement;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Keyed;
import org.relegend.map.MapTable;
import org.relegend.map.NameRules;
import org.relegend.map.NetEdits;
import org.relegend.map.PutEntry;
import org.relegend.map.RemoveEntry;
import org.relegend.store.JsonShape.ObjectCodec;

/**
 * Edits as JSON: the word for what is done stands first, as {@code {"edit": "put-part", "part":
 * …}}. The words are part of the journal's form and never change.
 */
final class EditShapes {
  private EditShapes() {}

  /** One kind of edit: its word, its fields. */
  private record Kind<E extends Edit>(String word, ObjectCodec<E> fields) {
    void write(Edit edit, JsonGenerator out) throws IOException {
      @SuppressWarnings("unchecked") // kindOf() finds it by the edit's class and table
      E typed = (E) edit;
      out.writeStartObject();
      out.writeStringField(WORD, word);
      fields.writeFields(typed, out);
      out.writeEndObject();
    }
  }

  private static final String WORD = "edit";
  private static final Map<String, Kind<?>> BY_WORD = new LinkedHashMap<>();
  private static final Map<Class<?>, Kind<?>> BY_TYPE = new LinkedHashMap<>();

  static final Codec<Edit> EDIT =
      new Codec<>() {
        @Override
        public Edit read(JsonParser in) throws IOException {
          if (in.currentToken() != JsonToken.START_OBJECT) {
            throw UnfitJsonException.here(in, "an edit in braces { } must stand here");
          }
          JsonLocation start = in.currentTokenLocation();
          if (!WORD.equals(in.nextFieldName())) {
            throw UnfitJsonException.here(in, "an edit begins with the field \"edit\"");
          }
          in.nextToken();
          String word = TEXT.read(in);
          Kind<?> kind = BY_WORD.get(word);
          if (kind == null) {
            throw UnfitJsonException.here(
                in, "\"" + NameRules.printable(word) + "\" is no edit that this version knows");
          }
          return kind.fields().readFields(in, start);
        }

        @Override
        public void write(Edit edit, JsonGenerator out) throws IOException {
          Kind<?> kind = kindOf(edit);
          if (kind == null) {
            throw new IllegalStateException("no form is told for " + edit);
          }
          kind.write(edit, out);
        }
      };

  private static final Map<MapTable<?, ?>, Kind<?>> PUTS = new LinkedHashMap<>();
  private static final Map<MapTable<?, ?>, Kind<?>> REMOVALS = new LinkedHashMap<>();

  static {
    MapTableCodecs.ALL.forEach(EditShapes::add);
    add("join-pins", NetEdits.JoinPins.class, joinPins());
    add("move-pin", NetEdits.MovePin.class, movePin());
    add("detach-pin", NetEdits.DetachPin.class, detachPin());
    add("merge-nets", NetEdits.MergeNets.class, mergeNets());
    add("confirm", ConfirmPlacement.class, confirm());
    add(
        "change-info",
        ChangeInfo.class,
        one("info", MapShapes.INFO, ChangeInfo::info, ChangeInfo::new));
    JsonShape<EditGroup> s = new JsonShape<>();
    var title = s.optional("title", TEXT, "", EditGroup::title);
    var steps = s.required("steps", list(EDIT), EditGroup::steps);
    add("group", EditGroup.class, s.madeBy(v -> new EditGroup(v.get(title), v.get(steps))));
  }

  /** The words of all edits that are told here. */
  static Set<String> known() {
    return BY_WORD.keySet();
  }

  private static @Nullable Kind<?> kindOf(Edit edit) {
    if (edit instanceof PutEntry<?, ?> put) {
      return PUTS.get(put.table());
    }
    return edit instanceof RemoveEntry<?, ?> removal
        ? REMOVALS.get(removal.table())
        : BY_TYPE.get(edit.getClass());
  }

  private static <K extends Comparable<? super K>, V extends Keyed<K>> void add(
      TableCodec<K, V> codec) {
    TableCodec.EditWords words = codec.words();
    ObjectCodec<PutEntry<K, V>> put =
        one(words.field(), codec.value(), PutEntry::entry, codec.table()::put);
    ObjectCodec<RemoveEntry<K, V>> removal =
        one(words.field(), codec.key(), RemoveEntry::key, codec.table()::remove);
    PUTS.put(codec.table(), kind(words.put(), put));
    REMOVALS.put(codec.table(), kind(words.remove(), removal));
  }

  private static <E extends Edit> Kind<E> kind(String word, ObjectCodec<E> fields) {
    Kind<E> kind = new Kind<>(word, fields);
    BY_WORD.put(word, kind);
    return kind;
  }

  private static <E extends Edit> void add(String word, Class<E> type, ObjectCodec<E> fields) {
    BY_TYPE.put(type, kind(word, fields));
  }

  private static <E, V> ObjectCodec<E> one(
      String name, Codec<V> codec, Function<E, V> part, Function<V, E> made) {
    JsonShape<E> s = new JsonShape<>();
    var field = s.required(name, codec, part);
    return s.madeBy(v -> made.apply(v.get(field)));
  }

  private static ObjectCodec<NetEdits.JoinPins> joinPins() {
    JsonShape<NetEdits.JoinPins> s = new JsonShape<>();
    var net = s.required("net", MapShapes.NET_ID, NetEdits.JoinPins::net);
    var members = s.required("members", list(MapShapes.MEMBER), NetEdits.JoinPins::members);
    return s.madeBy(v -> new NetEdits.JoinPins(v.get(net), v.get(members)));
  }

  private static ObjectCodec<NetEdits.MovePin> movePin() {
    JsonShape<NetEdits.MovePin> s = new JsonShape<>();
    var pin = s.required("pin", MapShapes.PIN_REF, NetEdits.MovePin::pin);
    var to = s.required("to", MapShapes.NET_ID, NetEdits.MovePin::to);
    var evidence = s.required("evidence", MapShapes.ATTESTATION, NetEdits.MovePin::evidence);
    return s.madeBy(v -> new NetEdits.MovePin(v.get(pin), v.get(to), v.get(evidence)));
  }

  private static ObjectCodec<NetEdits.DetachPin> detachPin() {
    JsonShape<NetEdits.DetachPin> s = new JsonShape<>();
    var net = s.required("net", MapShapes.NET_ID, NetEdits.DetachPin::net);
    var pin = s.required("pin", MapShapes.PIN_REF, NetEdits.DetachPin::pin);
    return s.madeBy(v -> new NetEdits.DetachPin(v.get(net), v.get(pin)));
  }

  private static ObjectCodec<NetEdits.MergeNets> mergeNets() {
    JsonShape<NetEdits.MergeNets> s = new JsonShape<>();
    var kept = s.required("kept", MapShapes.NET_ID, NetEdits.MergeNets::kept);
    var gone = s.required("gone", MapShapes.NET_ID, NetEdits.MergeNets::gone);
    return s.madeBy(v -> new NetEdits.MergeNets(v.get(kept), v.get(gone)));
  }

  private static ObjectCodec<ConfirmPlacement> confirm() {
    JsonShape<ConfirmPlacement> s = new JsonShape<>();
    var placement = s.required("placement", KeyShapes.PLACEMENT, ConfirmPlacement::placement);
    var evidence = s.required("evidence", MapShapes.ATTESTATION, ConfirmPlacement::evidence);
    return s.madeBy(v -> new ConfirmPlacement(v.get(placement), v.get(evidence)));
  }
}
