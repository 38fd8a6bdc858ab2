package org.relegend.store;

import static org.relegend.store.Codecs.WHOLE_NUMBER;

import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Placement;
import org.relegend.map.TwinPair;

/** The fields of the keys that placements, twins and discrepancies are found by. */
final class KeyShapes {
  private KeyShapes() {}

  static final Codec<Placement.Key> PLACEMENT = placement();
  static final Codec<TwinPair.Key> TWIN = twin();
  static final Codec<DrawingDiscrepancy.Key> DISCREPANCY = discrepancy();

  private static Codec<Placement.Key> placement() {
    JsonShape<Placement.Key> s = new JsonShape<>();
    var picture = s.required("picture", MapShapes.PICTURE_ID, Placement.Key::picture);
    var subject = s.required("subject", MapShapes.SUBJECT, Placement.Key::subject);
    var ordinal = s.optional("ordinal", WHOLE_NUMBER, 1, Placement.Key::ordinal);
    return s.madeBy(v -> new Placement.Key(v.get(picture), v.get(subject), v.get(ordinal)));
  }

  private static Codec<TwinPair.Key> twin() {
    JsonShape<TwinPair.Key> s = new JsonShape<>();
    var a = s.required("a", MapShapes.SUBJECT, TwinPair.Key::a);
    var b = s.required("b", MapShapes.SUBJECT, TwinPair.Key::b);
    return s.madeBy(v -> new TwinPair.Key(v.get(a), v.get(b)));
  }

  private static Codec<DrawingDiscrepancy.Key> discrepancy() {
    JsonShape<DrawingDiscrepancy.Key> s = new JsonShape<>();
    var subject = s.required("subject", MapShapes.SUBJECT, DrawingDiscrepancy.Key::subject);
    var aspect = s.required("aspect", MapShapes.ASPECT, DrawingDiscrepancy.Key::aspect);
    return s.madeBy(v -> new DrawingDiscrepancy.Key(v.get(subject), v.get(aspect)));
  }
}
