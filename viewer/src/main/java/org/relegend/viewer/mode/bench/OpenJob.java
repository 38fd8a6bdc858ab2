package org.relegend.viewer.mode.bench;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.relegend.bench.Instrument;
import org.relegend.bench.Job;
import org.relegend.bench.JobEdit;
import org.relegend.bench.JobTable;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.bench.Reading;
import org.relegend.bench.entry.TypedLine;
import org.relegend.bench.entry.TypedSetup;
import org.relegend.bench.rule.UnitReadings;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditRefusedException;
import org.relegend.map.History;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.marking.Quantity;
import org.relegend.viewer.session.Attester;
import org.relegend.viewer.session.Change;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.MapDocument;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Room;
import org.relegend.viewer.session.Selection;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;

/** The job that lies over the open map, if there is one: what is read, seen, thought and done. */
public final class OpenJob implements Room {
  private final MapDocument document;
  private final Selection selection;
  private final Attester hand;
  private final ChangeNotifier hub;
  private @Nullable History<Job, JobEdit> history;
  private Consumer<Job> keeper = job -> {};
  private boolean readOnly;
  private boolean lifted;
  private MeasurementSetup setting =
      MeasurementSetup.with(Instrument.UNKNOWN).with(MeasurementSetup.Power.ON);
  private @Nullable UnitReadings unit;
  private @Nullable Circuit circuit;

  /** The job by which dangers are followed. */
  private @Nullable Job judged;

  /** Whether each edit that can be undone was one of the job (else of the map), newest first. */
  private final Deque<Boolean> turns = new ArrayDeque<>();

  private final Deque<Boolean> undone = new ArrayDeque<>();

  public OpenJob(Session session) {
    this.document = session.document();
    this.selection = session.selection();
    this.hand = session.hand();
    this.hub = session.hub();
    document.add(
        new MapDocument.Storage() {
          @Override
          public void made(Edit edit, BoardMap after) {
            turn(false);
            forget();
          }

          @Override
          public void undone(BoardMap after) {
            forget();
          }

          @Override
          public void redone(BoardMap after) {
            forget();
          }
        });
  }

  private void forget() {
    circuit = null;
    unit = null;
  }

  private void turn(boolean ofJob) {
    turns.push(ofJob);
    undone.clear();
  }

  /**
   * Lays a job over the map.
   *
   * @param keeper is told of the job after every edit
   */
  public void lay(Job job, boolean readOnly, Consumer<Job> keeper) {
    hub.check();
    this.history = new History<>(job);
    this.readOnly = readOnly;
    this.keeper = keeper;
    this.setting = MeasurementSetup.with(job.instrument()).with(MeasurementSetup.Power.ON);
    unit = null;
    judge(job);
    document.lay(job.photos());
    hub.fire(Change.JOB);
  }

  /**
   * What was read and found on this unit counts for where it can hurt, as far as it has changed.
   */
  private void judge(Job job) {
    Job before = judged;
    if (before == null
        || !before.readings().equals(job.readings())
        || !before.conditions().equals(job.conditions())) {
      document.judge(Optional.of(seen -> UnitReadings.of(job, seen).hazards().hazards()));
      judged = job;
    }
  }

  public Optional<Job> job() {
    return Optional.ofNullable(history).map(History::current);
  }

  public boolean isOpen() {
    return history != null;
  }

  public boolean isReadOnly() {
    return readOnly;
  }

  /** What the readings say, against the map as it is now. */
  public Optional<UnitReadings> unit() {
    if (unit == null && history != null) {
      unit = UnitReadings.of(history.current(), circuit());
    }
    return Optional.ofNullable(unit);
  }

  /** The circuit of the map as it is now. */
  public Circuit circuit() {
    Circuit known = circuit;
    if (known == null) {
      known = Circuit.of(document.map());
      circuit = known;
    }
    return known;
  }

  /** Changes the job; where that can't be says why. Tells whether it was done. */
  public boolean apply(JobEdit edit) {
    hub.check();
    History<Job, JobEdit> open = history;
    if (open == null) {
      hub.say(Notice.Kind.NO_JOB);
      return false;
    }
    if (readOnly) {
      hub.say(Notice.Kind.JOB_READ_ONLY);
      return false;
    }
    try {
      if (open.apply(edit)) {
        hub.moveOn();
        turn(true);
        changed();
      }
      return true;
    } catch (EditRefusedException refused) {
      hub.say(Notice.Kind.REFUSED, String.valueOf(refused.getMessage()));
      return false;
    }
  }

  private void changed() {
    unit = null;
    job().ifPresent(keeper);
    job().ifPresent(this::judge);
    job().ifPresent(job -> document.lay(job.photos()));
    hub.fire(Change.JOB);
  }

  /** Takes the last edit back where it was one of the job; tells whether it was. */
  @Override
  public boolean undo() {
    Boolean ofJob = turns.poll();
    if (ofJob == null) {
      return false;
    }
    undone.push(ofJob);
    History<Job, JobEdit> open = history;
    return ofJob && open != null && step(open.undo(), Notice.Kind.UNDONE);
  }

  /** Makes the last edit again where it was one of the job; tells whether it was. */
  @Override
  public boolean redo() {
    Boolean ofJob = undone.poll();
    if (ofJob == null) {
      return false;
    }
    turns.push(ofJob);
    History<Job, JobEdit> open = history;
    return ofJob && open != null && step(open.redo(), Notice.Kind.REDONE);
  }

  private boolean step(Optional<JobEdit> done, Notice.Kind kind) {
    done.ifPresent(
        edit -> {
          String label = job().map(edit::label).orElse("");
          changed();
          hub.say(kind, label);
        });
    return done.isPresent();
  }

  /** What would be undone next, if that is an edit of the job. */
  public Optional<String> undoLabel() {
    return Boolean.TRUE.equals(turns.peek())
        ? Optional.ofNullable(history).flatMap(History::undoLabel)
        : Optional.empty();
  }

  /** What would be made again next, if that is an edit of the job. */
  public Optional<String> redoLabel() {
    return Boolean.TRUE.equals(undone.peek())
        ? Optional.ofNullable(history).flatMap(History::redoLabel)
        : Optional.empty();
  }

  public MeasurementSetup setting() {
    return setting;
  }

  /** How readings are taken from now on; the instrument is kept in the job. */
  public void setSetting(MeasurementSetup changed) {
    hub.check();
    setting = changed;
    if (job().filter(job -> !job.instrument().equals(changed.with())).isPresent()) {
      apply(new JobEdit.ChangeInstrument(changed.with()));
    }
    hub.fire(Change.JOB);
  }

  /** Where a reading typed now would be: the pin or part walked to, or the node chosen. */
  public Optional<Subject> place() {
    Optional<Subject> chosen = selection.subject();
    return chosen.filter(Subject.OfNet.class::isInstance).or(selection::focus);
  }

  /** The node that a place lies on, for comparing. */
  public Optional<NetId> node(Subject at) {
    return unit().flatMap(known -> known.netOf(at));
  }

  /**
   * A reading typed while probing: "-0.62", "101m", "4k7 ohm", "101m; limit 5 mV". Refused, with
   * the reason, where it can't be read or says too little.
   */
  public boolean type(String text) {
    hub.check();
    Optional<Subject> at = place();
    Optional<Job> job = job();
    if (job.isEmpty() || at.isEmpty()) {
      hub.say(job.isEmpty() ? Notice.Kind.NO_JOB : Notice.Kind.NOTHING_CHOSEN);
      return false;
    }
    try {
      Subject whole = whole(at.get());
      TypedLine.Assumed assumed = new TypedLine.Assumed(assumed(at.get()), assumed(whole));
      TypedLine line = TypedLine.parse(text, assumed, settingNow(), circuit());
      return take(job.get(), line.setting().lifted() ? whole : at.get(), line);
    } catch (IllegalArgumentException unfit) {
      hub.say(Notice.Kind.REFUSED, String.valueOf(unfit.getMessage()));
      return false;
    }
  }

  /** What is out of circuit is the part walked to, not its node. */
  private Subject whole(Subject at) {
    return selection
        .focus()
        .or(() -> Optional.of(at))
        .flatMap(SubjectQueries::partOf)
        .<Subject>map(Subject::of)
        .orElse(at);
  }

  private boolean take(Job job, Subject at, TypedLine line) {
    List<JobEdit> steps = new ArrayList<>();
    line.limit().ifPresent(limit -> steps.add(JobTable.LIMITS.put(limit.at(nodeOrPlace(at)))));
    steps.add(
        JobTable.READINGS.put(
            new Reading(
                job.nextReading(), at, line.amount(), line.setting(), hand.author(), hand.now())));
    String name = document.map().nameOf(at);
    boolean done =
        apply(steps.size() == 1 ? steps.get(0) : new JobEdit.Group("Reading at " + name, steps));
    if (done) {
      lifted = false;
      hub.say(Notice.Kind.READ, name, line.amount().text());
      hub.fire(Change.JOB);
    }
    return done;
  }

  /** Whether the next reading is of a part out of circuit: lifted, or taken out. */
  public boolean isLifted() {
    return lifted;
  }

  public void setLifted(boolean lifted) {
    hub.check();
    this.lifted = lifted;
    hub.fire(Change.JOB);
  }

  private MeasurementSetup settingNow() {
    return lifted ? setting.withLifted(true) : setting;
  }

  private Subject nodeOrPlace(Subject at) {
    return node(at).<Subject>map(Subject::of).orElse(at);
  }

  /** How far the node chosen may lie from its twin; the usual limit where none was set. */
  public Optional<NodeLimit> limit() {
    return job().flatMap(job -> place().map(at -> job.limit(nodeOrPlace(at))));
  }

  /**
   * Sets how far the node chosen may lie from its twin: "5 mV", "2 %"; the usual again where empty.
   *
   * @throws IllegalArgumentException with one sentence where it is none
   */
  public boolean limit(String text) {
    hub.check();
    Optional<Subject> at = place().map(this::nodeOrPlace);
    if (at.isEmpty()) {
      hub.say(Notice.Kind.NOTHING_CHOSEN);
      return false;
    }
    return apply(
        text.isBlank()
            ? JobTable.LIMITS.remove(at.get())
            : JobTable.LIMITS.put(TypedSetup.limit(text).at(at.get())));
  }

  /** Volts at nodes and pins; at a part what its kind is measured in. */
  private Quantity assumed(Subject at) {
    if (at instanceof Subject.OfNet || at instanceof Subject.OfPin) {
      return Quantity.VOLTAGE;
    }
    String family =
        SubjectQueries.partOf(at).flatMap(circuit()::kindOf).map(kind -> kind.family()).orElse("");
    return family.startsWith("cap") ? Quantity.CAPACITANCE : Quantity.RESISTANCE;
  }

  /** Says that there is no job to note anything in. */
  public void sayNoJob() {
    hub.say(Notice.Kind.NO_JOB);
  }

  /** When something noted now happens. */
  public Instant now() {
    return hand.now();
  }

  /** Who notes it. */
  public String author() {
    return hand.author();
  }
}
