package org.relegend.store;

import static org.relegend.store.Codecs.list;
import static org.relegend.store.Codecs.word;

import org.relegend.map.PicturePairs;

/** The fields of what lines two pictures up. */
final class PairShapes {
  private PairShapes() {}

  static final Codec<PicturePairs.Origin> FOUND =
      word(PicturePairs.Origin.values(), PicturePairs.Origin::word, PicturePairs.Origin::of);
  static final Codec<PicturePairs> PAIRS = pairs();
  static final Codec<PicturePairs.Key> KEY = key();

  private static Codec<PicturePairs> pairs() {
    JsonShape<PicturePairs> s = new JsonShape<>();
    var a = s.required("a", MapShapes.PICTURE_ID, PicturePairs::a);
    var b = s.required("b", MapShapes.PICTURE_ID, PicturePairs::b);
    var found = s.required("found", FOUND, PicturePairs::origin);
    var spots = s.required("pairs", list(PointCodec.SPOT), PicturePairs::spots);
    var evidence = s.required("evidence", MapShapes.EVIDENCE, PicturePairs::evidence);
    return s.madeBy(
        v -> new PicturePairs(v.get(a), v.get(b), v.get(found), v.get(spots), v.get(evidence)));
  }

  private static Codec<PicturePairs.Key> key() {
    JsonShape<PicturePairs.Key> s = new JsonShape<>();
    var a = s.required("a", MapShapes.PICTURE_ID, PicturePairs.Key::a);
    var b = s.required("b", MapShapes.PICTURE_ID, PicturePairs.Key::b);
    return s.madeBy(v -> PicturePairs.Key.of(v.get(a), v.get(b)));
  }
}
