package org.relegend.store;

import static org.relegend.store.Codecs.TEXT;
import static org.relegend.store.Codecs.list;
import static org.relegend.store.Codecs.word;

import java.util.List;
import org.relegend.map.Deviation;
import org.relegend.map.Discrepancy;
import org.relegend.map.Subject;

/** The fields of what differs: between two channels, and between board and drawing. */
final class DeviationShapes {
  private DeviationShapes() {}

  private static final Codec<List<Subject>> PLACES = list(MapShapes.SUBJECT);
  private static final Codec<Deviation.Aspect> ASPECT =
      word(Deviation.Aspect.values(), Deviation.Aspect::word, Deviation.Aspect::of);
  private static final Codec<Deviation.Cause> CAUSE =
      word(Deviation.Cause.values(), Deviation.Cause::word, Deviation.Cause::of);
  static final Codec<Deviation> DEVIATION = deviation();
  static final Codec<Deviation.Key> KEY = key();

  private static Codec<Deviation> deviation() {
    Shape<Deviation> s = new Shape<>();
    var at = s.required("at", PLACES, Deviation::at);
    var aspect = s.required("aspect", ASPECT, Deviation::aspect);
    var cause = s.required("cause", CAUSE, Deviation::cause);
    var evidence = s.required("evidence", MapShapes.EVIDENCE, Deviation::evidence);
    var note = s.optional("note", TEXT, "", Deviation::note);
    return s.madeBy(
        v -> new Deviation(v.get(at), v.get(aspect), v.get(cause), v.get(evidence), v.get(note)));
  }

  private static Codec<Deviation.Key> key() {
    Shape<Deviation.Key> s = new Shape<>();
    var at = s.required("at", PLACES, Deviation.Key::at);
    var aspect = s.required("aspect", ASPECT, Deviation.Key::aspect);
    return s.madeBy(v -> new Deviation.Key(v.get(at), v.get(aspect)));
  }

  static Codec<Discrepancy> discrepancy() {
    Shape<Discrepancy> s = new Shape<>();
    var subject = s.required("subject", MapShapes.SUBJECT, Discrepancy::subject);
    var aspect = s.required("aspect", MapShapes.ASPECT, Discrepancy::aspect);
    var drawn = s.optional("drawn", TEXT, "", Discrepancy::drawn);
    var evidence = s.required("evidence", MapShapes.EVIDENCE, Discrepancy::evidence);
    var note = s.optional("note", TEXT, "", Discrepancy::note);
    return s.madeBy(
        v ->
            new Discrepancy(
                v.get(subject), v.get(aspect), v.get(drawn), v.get(evidence), v.get(note)));
  }
}
