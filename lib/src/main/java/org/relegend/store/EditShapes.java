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
import org.relegend.map.ChangeInfo;
import org.relegend.map.ClashEdits;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Names;
import org.relegend.map.NetEdits;
import org.relegend.map.PartEdits;
import org.relegend.map.PictureEdits;
import org.relegend.map.PlacementEdits;
import org.relegend.store.Shape.ObjectCodec;

/**
 * Edits as JSON: the word for what is done stands first, as {@code {"edit": "put-part", "part":
 * …}}. The words are part of the journal's form and never change.
 */
final class EditShapes {
  private EditShapes() {}

  /** One kind of edit: its word, its class, its fields. */
  private record Kind<E extends Edit>(String word, Class<E> type, ObjectCodec<E> fields) {
    void write(Edit edit, JsonGenerator out) throws IOException {
      out.writeStartObject();
      out.writeStringField(WORD, word);
      fields.writeFields(type.cast(edit), out);
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
            throw UnfitException.here(in, "an edit in braces { } must stand here");
          }
          JsonLocation start = in.currentTokenLocation();
          if (!WORD.equals(in.nextFieldName())) {
            throw UnfitException.here(in, "an edit begins with the field \"edit\"");
          }
          in.nextToken();
          String word = TEXT.read(in);
          Kind<?> kind = BY_WORD.get(word);
          if (kind == null) {
            throw UnfitException.here(
                in, "\"" + Names.printable(word) + "\" is no edit that this version knows");
          }
          return kind.fields().readFields(in, start);
        }

        @Override
        public void write(Edit edit, JsonGenerator out) throws IOException {
          Kind<?> kind = BY_TYPE.get(edit.getClass());
          if (kind == null) {
            throw new IllegalStateException("no form is told for " + edit.getClass());
          }
          kind.write(edit, out);
        }
      };

  static {
    pictures();
    parts();
    nets();
    placements();
    add(
        "put-clash",
        ClashEdits.PutClash.class,
        one("clash", ClashShapes.CLASH, ClashEdits.PutClash::clash, ClashEdits.PutClash::new));
    add(
        "remove-clash",
        ClashEdits.RemoveClash.class,
        one("clash", ClashShapes.KEY, ClashEdits.RemoveClash::clash, ClashEdits.RemoveClash::new));
    add(
        "change-info",
        ChangeInfo.class,
        one("info", MapShapes.INFO, ChangeInfo::info, ChangeInfo::new));
    Shape<EditGroup> s = new Shape<>();
    var title = s.optional("title", TEXT, "", EditGroup::title);
    var steps = s.required("steps", list(EDIT), EditGroup::steps);
    add("group", EditGroup.class, s.madeBy(v -> new EditGroup(v.get(title), v.get(steps))));
  }

  /** The classes whose form is told here. */
  static Set<Class<?>> known() {
    return BY_TYPE.keySet();
  }

  private static <E extends Edit> void add(String word, Class<E> type, ObjectCodec<E> fields) {
    Kind<E> kind = new Kind<>(word, type, fields);
    BY_WORD.put(word, kind);
    BY_TYPE.put(type, kind);
  }

  private static <E, V> ObjectCodec<E> one(
      String name, Codec<V> codec, Function<E, V> part, Function<V, E> made) {
    Shape<E> s = new Shape<>();
    var field = s.required(name, codec, part);
    return s.madeBy(v -> made.apply(v.get(field)));
  }

  private static void pictures() {
    add(
        "put-board",
        PictureEdits.PutBoard.class,
        one("board", MapShapes.BOARD, PictureEdits.PutBoard::board, PictureEdits.PutBoard::new));
    add(
        "remove-board",
        PictureEdits.RemoveBoard.class,
        one(
            "board",
            MapShapes.BOARD_ID,
            PictureEdits.RemoveBoard::board,
            PictureEdits.RemoveBoard::new));
    add(
        "put-picture",
        PictureEdits.PutPicture.class,
        one(
            "picture",
            MapShapes.PICTURE,
            PictureEdits.PutPicture::picture,
            PictureEdits.PutPicture::new));
    add(
        "remove-picture",
        PictureEdits.RemovePicture.class,
        one(
            "picture",
            MapShapes.PICTURE_ID,
            PictureEdits.RemovePicture::picture,
            PictureEdits.RemovePicture::new));
    add(
        "put-zone",
        PictureEdits.PutZone.class,
        one("zone", MapShapes.ZONE, PictureEdits.PutZone::zone, PictureEdits.PutZone::new));
    add(
        "remove-zone",
        PictureEdits.RemoveZone.class,
        one(
            "zone",
            MapShapes.ZONE_ID,
            PictureEdits.RemoveZone::zone,
            PictureEdits.RemoveZone::new));
    add(
        "put-pairs",
        PictureEdits.PutPairs.class,
        one("pairs", PairShapes.PAIRS, PictureEdits.PutPairs::pairs, PictureEdits.PutPairs::new));
    add(
        "remove-pairs",
        PictureEdits.RemovePairs.class,
        one(
            "pairs",
            PairShapes.KEY,
            PictureEdits.RemovePairs::pairs,
            PictureEdits.RemovePairs::new));
  }

  private static void parts() {
    add(
        "put-part",
        PartEdits.PutPart.class,
        one("part", MapShapes.PART, PartEdits.PutPart::part, PartEdits.PutPart::new));
    add(
        "remove-part",
        PartEdits.RemovePart.class,
        one("part", MapShapes.PART_ID, PartEdits.RemovePart::part, PartEdits.RemovePart::new));
    add(
        "put-channel",
        PartEdits.PutChannel.class,
        one(
            "channel",
            MapShapes.CHANNEL,
            PartEdits.PutChannel::channel,
            PartEdits.PutChannel::new));
    add(
        "remove-channel",
        PartEdits.RemoveChannel.class,
        one("channel", TEXT, PartEdits.RemoveChannel::channel, PartEdits.RemoveChannel::new));
    add(
        "put-mating",
        PartEdits.PutMating.class,
        one("mating", MapShapes.MATING, PartEdits.PutMating::mating, PartEdits.PutMating::new));
    add(
        "remove-mating",
        PartEdits.RemoveMating.class,
        one(
            "mating",
            MapShapes.MATING,
            PartEdits.RemoveMating::mating,
            PartEdits.RemoveMating::new));
    add(
        "declare-twin",
        PartEdits.DeclareTwin.class,
        one("pair", MapShapes.TWIN, PartEdits.DeclareTwin::pair, PartEdits.DeclareTwin::new));
    add(
        "remove-twin",
        PartEdits.RemoveTwin.class,
        one("pair", KeyShapes.TWIN, PartEdits.RemoveTwin::pair, PartEdits.RemoveTwin::new));
    add(
        "put-deviation",
        PartEdits.PutDeviation.class,
        one(
            "deviation",
            DeviationShapes.DEVIATION,
            PartEdits.PutDeviation::deviation,
            PartEdits.PutDeviation::new));
    add(
        "remove-deviation",
        PartEdits.RemoveDeviation.class,
        one(
            "deviation",
            DeviationShapes.KEY,
            PartEdits.RemoveDeviation::deviation,
            PartEdits.RemoveDeviation::new));
  }

  private static void nets() {
    add(
        "put-net",
        NetEdits.PutNet.class,
        one("net", MapShapes.NET, NetEdits.PutNet::net, NetEdits.PutNet::new));
    add(
        "remove-net",
        NetEdits.RemoveNet.class,
        one("net", MapShapes.NET_ID, NetEdits.RemoveNet::net, NetEdits.RemoveNet::new));
    add("join-pins", NetEdits.JoinPins.class, joinPins());
    add("move-pin", NetEdits.MovePin.class, movePin());
    add("detach-pin", NetEdits.DetachPin.class, detachPin());
    add("merge-nets", NetEdits.MergeNets.class, mergeNets());
    add(
        "put-discrepancy",
        NetEdits.PutDiscrepancy.class,
        one(
            "discrepancy",
            MapShapes.DISCREPANCY,
            NetEdits.PutDiscrepancy::discrepancy,
            NetEdits.PutDiscrepancy::new));
    add(
        "remove-discrepancy",
        NetEdits.RemoveDiscrepancy.class,
        one(
            "discrepancy",
            KeyShapes.DISCREPANCY,
            NetEdits.RemoveDiscrepancy::discrepancy,
            NetEdits.RemoveDiscrepancy::new));
  }

  private static ObjectCodec<NetEdits.JoinPins> joinPins() {
    Shape<NetEdits.JoinPins> s = new Shape<>();
    var net = s.required("net", MapShapes.NET_ID, NetEdits.JoinPins::net);
    var members = s.required("members", list(MapShapes.MEMBER), NetEdits.JoinPins::members);
    return s.madeBy(v -> new NetEdits.JoinPins(v.get(net), v.get(members)));
  }

  private static ObjectCodec<NetEdits.MovePin> movePin() {
    Shape<NetEdits.MovePin> s = new Shape<>();
    var pin = s.required("pin", MapShapes.PIN_REF, NetEdits.MovePin::pin);
    var to = s.required("to", MapShapes.NET_ID, NetEdits.MovePin::to);
    var evidence = s.required("evidence", MapShapes.ATTESTATION, NetEdits.MovePin::evidence);
    return s.madeBy(v -> new NetEdits.MovePin(v.get(pin), v.get(to), v.get(evidence)));
  }

  private static ObjectCodec<NetEdits.DetachPin> detachPin() {
    Shape<NetEdits.DetachPin> s = new Shape<>();
    var net = s.required("net", MapShapes.NET_ID, NetEdits.DetachPin::net);
    var pin = s.required("pin", MapShapes.PIN_REF, NetEdits.DetachPin::pin);
    return s.madeBy(v -> new NetEdits.DetachPin(v.get(net), v.get(pin)));
  }

  private static ObjectCodec<NetEdits.MergeNets> mergeNets() {
    Shape<NetEdits.MergeNets> s = new Shape<>();
    var kept = s.required("kept", MapShapes.NET_ID, NetEdits.MergeNets::kept);
    var gone = s.required("gone", MapShapes.NET_ID, NetEdits.MergeNets::gone);
    return s.madeBy(v -> new NetEdits.MergeNets(v.get(kept), v.get(gone)));
  }

  private static void placements() {
    add(
        "place",
        PlacementEdits.Place.class,
        one(
            "placement",
            MapShapes.PLACEMENT,
            PlacementEdits.Place::placement,
            PlacementEdits.Place::new));
    add(
        "unplace",
        PlacementEdits.Unplace.class,
        one(
            "placement",
            KeyShapes.PLACEMENT,
            PlacementEdits.Unplace::placement,
            PlacementEdits.Unplace::new));
    Shape<PlacementEdits.Confirm> s = new Shape<>();
    var placement = s.required("placement", KeyShapes.PLACEMENT, PlacementEdits.Confirm::placement);
    var evidence = s.required("evidence", MapShapes.ATTESTATION, PlacementEdits.Confirm::evidence);
    add(
        "confirm",
        PlacementEdits.Confirm.class,
        s.madeBy(v -> new PlacementEdits.Confirm(v.get(placement), v.get(evidence))));
  }
}
