package org.relegend.store;

import static org.relegend.store.Codecs.TEXT;
import static org.relegend.store.Codecs.list;
import static org.relegend.store.Codecs.word;

import java.util.List;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.DrawingDiscrepancy;
import org.relegend.map.Subject;

/** The fields of what differs: between two channels, and between board and drawing. */
final class DeviationShapes {
  private DeviationShapes() {}

  private static final Codec<List<Subject>> PLACES = list(MapShapes.SUBJECT);
  private static final Codec<ChannelDeviation.Aspect> ASPECT =
      word(
          ChannelDeviation.Aspect.values(),
          ChannelDeviation.Aspect::word,
          ChannelDeviation.Aspect::of);
  private static final Codec<ChannelDeviation.Cause> CAUSE =
      word(
          ChannelDeviation.Cause.values(),
          ChannelDeviation.Cause::word,
          ChannelDeviation.Cause::of);
  static final Codec<ChannelDeviation> DEVIATION = deviation();
  static final Codec<ChannelDeviation.Key> KEY = key();

  private static Codec<ChannelDeviation> deviation() {
    JsonShape<ChannelDeviation> s = new JsonShape<>();
    var at = s.required("at", PLACES, ChannelDeviation::at);
    var aspect = s.required("aspect", ASPECT, ChannelDeviation::aspect);
    var cause = s.required("cause", CAUSE, ChannelDeviation::cause);
    var evidence = s.required("evidence", MapShapes.EVIDENCE, ChannelDeviation::evidence);
    var note = s.optional("note", TEXT, "", ChannelDeviation::note);
    return s.madeBy(
        v ->
            new ChannelDeviation(
                v.get(at), v.get(aspect), v.get(cause), v.get(evidence), v.get(note)));
  }

  private static Codec<ChannelDeviation.Key> key() {
    JsonShape<ChannelDeviation.Key> s = new JsonShape<>();
    var at = s.required("at", PLACES, ChannelDeviation.Key::at);
    var aspect = s.required("aspect", ASPECT, ChannelDeviation.Key::aspect);
    return s.madeBy(v -> new ChannelDeviation.Key(v.get(at), v.get(aspect)));
  }

  static Codec<DrawingDiscrepancy> discrepancy() {
    JsonShape<DrawingDiscrepancy> s = new JsonShape<>();
    var subject = s.required("subject", MapShapes.SUBJECT, DrawingDiscrepancy::subject);
    var aspect = s.required("aspect", MapShapes.ASPECT, DrawingDiscrepancy::aspect);
    var drawn = s.optional("drawn", TEXT, "", DrawingDiscrepancy::drawn);
    var evidence = s.required("evidence", MapShapes.EVIDENCE, DrawingDiscrepancy::evidence);
    var note = s.optional("note", TEXT, "", DrawingDiscrepancy::note);
    return s.madeBy(
        v ->
            new DrawingDiscrepancy(
                v.get(subject), v.get(aspect), v.get(drawn), v.get(evidence), v.get(note)));
  }
}
