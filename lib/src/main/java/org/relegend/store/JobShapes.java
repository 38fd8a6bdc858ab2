package org.relegend.store;

import static org.relegend.store.Codecs.NUMBER;
import static org.relegend.store.Codecs.TEXT;
import static org.relegend.store.Codecs.WHOLE_NUMBER;
import static org.relegend.store.Codecs.list;
import static org.relegend.store.Codecs.word;
import static org.relegend.store.MapShapes.INSTANT;
import static org.relegend.store.MapShapes.PART_ID;
import static org.relegend.store.MapShapes.PICTURE_ID;
import static org.relegend.store.MapShapes.SUBJECT;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.relegend.bench.CheckMark;
import org.relegend.bench.CheckStep;
import org.relegend.bench.Condition;
import org.relegend.bench.EntryId;
import org.relegend.bench.Hypothesis;
import org.relegend.bench.Instrument;
import org.relegend.bench.IntakeRecord;
import org.relegend.bench.Job;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.JobTable;
import org.relegend.bench.LogEntry;
import org.relegend.bench.MapLink;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.bench.PartState;
import org.relegend.bench.Reading;
import org.relegend.lineup.PointPair;
import org.relegend.map.FixedWords;
import org.relegend.map.Photo;
import org.relegend.map.Picture;
import org.relegend.map.PicturePairs.Origin;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.marking.Waveform;

/** The fields of everything a job holds, in the order they are written in. */
final class JobShapes {
  private JobShapes() {}

  private static final Codec<EntryId> ENTRY =
      new Wrapped<>(WHOLE_NUMBER) {
        @Override
        EntryId wrap(Integer number) {
          return new EntryId(number);
        }

        @Override
        Integer unwrap(EntryId id) {
          return id.number();
        }
      };

  private static final Codec<Photo> PHOTO =
      new Wrapped<>(MapShapes.PICTURE) {
        @Override
        Photo wrap(Picture picture) {
          if (picture instanceof Photo photo) {
            return photo;
          }
          throw new IllegalArgumentException("a job has photos, no pages");
        }

        @Override
        Picture unwrap(Photo photo) {
          return photo;
        }
      };

  private static final Codec<Set<PartState>> STATES =
      new Wrapped<>(list(word(PartState.values(), PartState::word, PartState::of))) {
        @Override
        Set<PartState> wrap(List<PartState> states) {
          return new TreeSet<>(states);
        }

        @Override
        List<PartState> unwrap(Set<PartState> states) {
          return List.copyOf(states);
        }
      };

  private static final Codec<Quantity> QUANTITY =
      word(
          Quantity.values(),
          Quantity::label,
          text -> FixedWords.find(Quantity.values(), Quantity::label, "quantity", text));
  private static final Codec<Waveform> WAVEFORM =
      word(
          Waveform.values(),
          JobShapes::lower,
          text -> FixedWords.find(Waveform.values(), JobShapes::lower, "waveform", text));
  private static final Codec<MeasurementSetup.Power> POWER =
      word(
          MeasurementSetup.Power.values(),
          MeasurementSetup.Power::word,
          MeasurementSetup.Power::of);
  private static final Codec<Hypothesis.Result> RESULT =
      word(Hypothesis.Result.values(), Hypothesis.Result::word, Hypothesis.Result::of);
  private static final Codec<CheckStep> STEP =
      word(CheckStep.values(), CheckStep::word, CheckStep::of);
  private static final Codec<LogEntry.Kind> LOG_KIND =
      word(LogEntry.Kind.values(), LogEntry.Kind::word, LogEntry.Kind::of);
  private static final Codec<Instrument> INSTRUMENT = instrument();

  static final Codec<Job> JOB = job();

  private static String lower(Waveform waveform) {
    return waveform.name().toLowerCase(Locale.ROOT);
  }

  /** A value that is written as another is. */
  private abstract static class Wrapped<T, V> implements Codec<V> {
    private final Codec<T> inner;

    Wrapped(Codec<T> inner) {
      this.inner = inner;
    }

    abstract V wrap(T value);

    abstract T unwrap(V value);

    @Override
    public V read(JsonParser in) throws IOException {
      T value = inner.read(in);
      try {
        return wrap(value);
      } catch (IllegalArgumentException e) {
        throw UnfitJsonException.here(in, String.valueOf(e.getMessage()));
      }
    }

    @Override
    public void write(V value, JsonGenerator out) throws IOException {
      inner.write(unwrap(value), out);
    }
  }

  private static Codec<Job> job() {
    JsonShape<Job> s = new JsonShape<>();
    s.required("format", WHOLE_NUMBER, job -> JobFormat.CURRENT);
    var id = s.required("id", TEXT, Job::id);
    var map = s.required("map", mapLink(), Job::map);
    var intake = s.optional("intake", intake(), IntakeRecord.EMPTY, Job::intake);
    var instrument = s.optional("instrument", INSTRUMENT, Instrument.UNKNOWN, Job::instrument);
    TableFields<Job> tables =
        new TableFields<>(s)
            .add(JobTable.PHOTOS, photo())
            .add(JobTable.CONDITIONS, condition())
            .add(JobTable.READINGS, reading())
            .add(JobTable.LIMITS, limit())
            .add(JobTable.HYPOTHESES, hypothesis())
            .add(JobTable.CHECKLIST, mark())
            .add(JobTable.LOG, logEntry());
    return s.madeBy(
        v -> new Job(v.get(id), v.get(map), v.get(intake), v.get(instrument), tables.of(v)));
  }

  private static Codec<MapLink> mapLink() {
    JsonShape<MapLink> s = new JsonShape<>();
    var id = s.required("id", TEXT, MapLink::id);
    var digest = s.required("digest", TEXT, MapLink::digest);
    var title = s.optional("title", TEXT, "", MapLink::title);
    var place = s.optional("place", TEXT, "", MapLink::place);
    return s.madeBy(v -> new MapLink(v.get(id), v.get(digest), v.get(title), v.get(place)));
  }

  private static Codec<IntakeRecord> intake() {
    JsonShape<IntakeRecord> s = new JsonShape<>();
    var complaint = s.optional("complaint", TEXT, "", IntakeRecord::complaint);
    var customer = s.optional("customer", TEXT, "", IntakeRecord::customer);
    var serial = s.optional("serial", TEXT, "", IntakeRecord::serial);
    var accessories = s.optional("accessories", TEXT, "", IntakeRecord::accessories);
    var history = s.optional("history", TEXT, "", IntakeRecord::history);
    var by = s.optional("received_by", TEXT, "", IntakeRecord::receivedBy);
    var at = s.optional("at", INSTANT, Instant.EPOCH, IntakeRecord::at);
    return s.madeBy(
        v ->
            new IntakeRecord(
                v.get(complaint),
                v.get(customer),
                v.get(serial),
                v.get(accessories),
                v.get(history),
                v.get(by),
                v.get(at)));
  }

  private static Codec<Instrument> instrument() {
    JsonShape<Instrument> s = new JsonShape<>();
    var name = s.optional("name", TEXT, "", Instrument::name);
    var ohms = s.optional("ohms", NUMBER, 0.0, Instrument::ohms);
    var farads = s.optional("farads", NUMBER, 0.0, Instrument::farads);
    return s.madeBy(v -> new Instrument(v.get(name), v.get(ohms), v.get(farads)));
  }

  private static Codec<PointPair> pair() {
    JsonShape<PointPair> s = new JsonShape<>();
    var from = s.required("from", PointCodec.POINT, PointPair::from);
    var to = s.required("to", PointCodec.POINT, PointPair::to);
    return s.madeBy(v -> new PointPair(v.get(from), v.get(to)));
  }

  private static Codec<JobPhoto> photo() {
    JsonShape<JobPhoto> s = new JsonShape<>();
    var photo = s.required("photo", PHOTO, JobPhoto::photo);
    var onto = s.optional("onto", TEXT, "", JobPhoto::onto);
    var found = s.optional("found", PairShapes.FOUND, Origin.CLICKED, JobPhoto::origin);
    var pairs = s.optional("pairs", list(pair()), List.of(), JobPhoto::pairs);
    var shows = s.optional("shows", list(PART_ID), List.of(), JobPhoto::shows);
    return s.madeBy(
        v -> new JobPhoto(v.get(photo), v.get(onto), v.get(found), v.get(pairs), v.get(shows)));
  }

  private static Codec<Condition> condition() {
    JsonShape<Condition> s = new JsonShape<>();
    var part = s.required("part", PART_ID, Condition::part);
    var states = s.required("states", STATES, Condition::states);
    var fitted = s.optional("fitted", TEXT, "", Condition::fitted);
    var dateCode = s.optional("date_code", TEXT, "", Condition::dateCode);
    var note = s.optional("note", TEXT, "", Condition::note);
    var photos = s.optional("photos", list(PICTURE_ID), List.of(), Condition::photos);
    var author = s.optional("author", TEXT, "", Condition::author);
    var at = s.required("at", INSTANT, Condition::at);
    return s.madeBy(
        v ->
            new Condition(
                v.get(part),
                v.get(states),
                v.get(fitted),
                v.get(dateCode),
                v.get(note),
                v.get(photos),
                v.get(author),
                v.get(at)));
  }

  private static Codec<MeasurementSetup> setting() {
    JsonShape<MeasurementSetup> s = new JsonShape<>();
    var against = s.optional("against", TEXT, "", MeasurementSetup::against);
    var with = s.optional("with", INSTRUMENT, Instrument.UNKNOWN, MeasurementSetup::with);
    var power =
        s.optional("power", POWER, MeasurementSetup.Power.UNSTATED, MeasurementSetup::power);
    var lifted = s.optional("lifted", Codecs.TRUTH, false, MeasurementSetup::lifted);
    var words = s.optional("words", TEXT, "", MeasurementSetup::words);
    return s.madeBy(
        v ->
            new MeasurementSetup(
                v.get(against), v.get(with), v.get(power), v.get(lifted), v.get(words)));
  }

  private static Codec<Reading> reading() {
    JsonShape<Reading> s = new JsonShape<>();
    var id = s.required("id", ENTRY, Reading::id);
    var at = s.required("at", SUBJECT, Reading::at);
    var quantity = s.required("quantity", QUANTITY, Reading::quantity);
    var value = s.required("value", NUMBER, Reading::value);
    var waveform =
        s.optional("waveform", WAVEFORM, Waveform.UNSTATED, reading -> reading.amount().waveform());
    var setting =
        s.optional(
            "setting", setting(), MeasurementSetup.with(Instrument.UNKNOWN), Reading::setting);
    var author = s.optional("author", TEXT, "", Reading::author);
    var taken = s.required("taken", INSTANT, Reading::taken);
    return s.madeBy(
        v ->
            new Reading(
                v.get(id),
                v.get(at),
                new Amount(v.get(quantity), v.get(value), v.get(waveform)),
                v.get(setting),
                v.get(author),
                v.get(taken)));
  }

  private static Codec<NodeLimit> limit() {
    JsonShape<NodeLimit> s = new JsonShape<>();
    var at = s.required("at", SUBJECT, NodeLimit::at);
    var fraction = s.required("fraction", NUMBER, NodeLimit::fraction);
    var volts = s.required("volts", NUMBER, NodeLimit::volts);
    return s.madeBy(v -> new NodeLimit(v.get(at), v.get(fraction), v.get(volts)));
  }

  private static Codec<Hypothesis> hypothesis() {
    JsonShape<Hypothesis> s = new JsonShape<>();
    var id = s.required("id", ENTRY, Hypothesis::id);
    var parts = s.optional("parts", list(PART_ID), List.of(), Hypothesis::parts);
    var what = s.required("what", TEXT, Hypothesis::what);
    var why = s.optional("why", TEXT, "", Hypothesis::why);
    var test = s.optional("test", TEXT, "", Hypothesis::test);
    var result = s.optional("result", RESULT, Hypothesis.Result.OPEN, Hypothesis::result);
    var outcome = s.optional("outcome", TEXT, "", Hypothesis::outcome);
    var author = s.optional("author", TEXT, "", Hypothesis::author);
    var at = s.required("at", INSTANT, Hypothesis::at);
    return s.madeBy(
        v ->
            new Hypothesis(
                v.get(id),
                v.get(parts),
                v.get(what),
                v.get(why),
                v.get(test),
                v.get(result),
                v.get(outcome),
                v.get(author),
                v.get(at)));
  }

  private static Codec<CheckMark> mark() {
    JsonShape<CheckMark> s = new JsonShape<>();
    var step = s.required("step", STEP, CheckMark::step);
    var note = s.optional("note", TEXT, "", CheckMark::note);
    var author = s.optional("author", TEXT, "", CheckMark::author);
    var at = s.required("at", INSTANT, CheckMark::at);
    return s.madeBy(v -> new CheckMark(v.get(step), v.get(note), v.get(author), v.get(at)));
  }

  private static Codec<LogEntry> logEntry() {
    JsonShape<LogEntry> s = new JsonShape<>();
    var id = s.required("id", ENTRY, LogEntry::id);
    var kind = s.required("kind", LOG_KIND, LogEntry::kind);
    var about = s.optional("about", list(SUBJECT), List.of(), LogEntry::about);
    var text = s.required("text", TEXT, LogEntry::text);
    var author = s.optional("author", TEXT, "", LogEntry::author);
    var at = s.required("at", INSTANT, LogEntry::at);
    return s.madeBy(
        v ->
            new LogEntry(
                v.get(id), v.get(kind), v.get(about), v.get(text), v.get(author), v.get(at)));
  }
}
