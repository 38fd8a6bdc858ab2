package org.relegend.viewer.mode.bench;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.relegend.bench.CheckMark;
import org.relegend.bench.CheckStep;
import org.relegend.bench.Instrument;
import org.relegend.bench.IntakeRecord;
import org.relegend.bench.Job;
import org.relegend.bench.JobEdit;
import org.relegend.bench.JobPhoto;
import org.relegend.bench.JobTable;
import org.relegend.bench.LogEntry;
import org.relegend.bench.MeasurementSetup;
import org.relegend.bench.NodeLimit;
import org.relegend.bench.entry.TypedLine;
import org.relegend.bench.entry.TypedSetup;
import org.relegend.map.Designator;
import org.relegend.map.NetId;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.marking.Amount;
import org.relegend.marking.Quantity;
import org.relegend.marking.TypedAmounts;
import org.relegend.viewer.control.Form;
import org.relegend.viewer.control.Messages;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SubjectQueries;

/** Asks for what a job is told: intake, meter, hypotheses, the log, the checklist. */
public final class JobDialogs {
  private JobDialogs() {}

  private static Optional<Job> job(Session session) {
    return session.room(OpenJob.class).job();
  }

  public static void intake(Component over, Session session) {
    IntakeRecord now = job(session).map(Job::intake).orElse(IntakeRecord.EMPTY);
    new Form("intake")
        .line("complaint", now.complaint())
        .line("customer", now.customer())
        .line("serial", now.serial())
        .line("accessories", now.accessories())
        .line("history", now.history())
        .ask(over)
        .ifPresent(
            stated ->
                trying(
                    over,
                    () ->
                        session
                            .room(OpenJob.class)
                            .apply(new JobEdit.ChangeIntake(intake(session, now, stated)))));
  }

  private static IntakeRecord intake(
      Session session, IntakeRecord before, Map<String, String> stated) {
    boolean first = before.equals(IntakeRecord.EMPTY);
    return new IntakeRecord(
        stated.getOrDefault("complaint", ""),
        stated.getOrDefault("customer", ""),
        stated.getOrDefault("serial", ""),
        stated.getOrDefault("accessories", ""),
        stated.getOrDefault("history", ""),
        first ? session.room(OpenJob.class).author() : before.receivedBy(),
        first ? session.room(OpenJob.class).now() : before.at());
  }

  /** What readings are taken with from now on, and whether the unit has power. */
  public static void meter(Component over, Session session) {
    MeasurementSetup now = session.room(OpenJob.class).setting();
    Instrument usual = now.with().known() ? now.with() : Instrument.DIGITAL_METER;
    new Form("meter")
        .line("ohms", new Amount(Quantity.RESISTANCE, usual.ohms()).text())
        .line("farads", farads(usual))
        .line("name", usual.name())
        .choice(
            "power", List.of("on", "off"), now.power() == MeasurementSetup.Power.OFF ? "off" : "on")
        .line("against", now.against().isEmpty() ? "" : net(session, now.against()))
        .line("words", now.words())
        .ask(over)
        .ifPresent(
            stated ->
                trying(
                    over,
                    () -> session.room(OpenJob.class).setSetting(setting(session, now, stated))));
  }

  private static String farads(Instrument instrument) {
    return instrument.farads() == 0
        ? ""
        : new Amount(Quantity.CAPACITANCE, instrument.farads()).text();
  }

  private static double farads(String typed) {
    return typed.isEmpty()
        ? 0
        : TypedAmounts.read(typed, Quantity.CAPACITANCE)
            .only()
            .orElseThrow(
                () -> new IllegalArgumentException(Messages.of("meter.unread.farads", typed)))
            .value();
  }

  private static String net(Session session, String id) {
    return session.map().nameOf(Subject.of(new NetId(id)));
  }

  /** How far the node chosen may lie from its twin. */
  public static void limit(Component over, Session session) {
    Optional<NodeLimit> now = session.room(OpenJob.class).limit();
    if (now.isEmpty()) {
      session.room(OpenJob.class).limit(""); // says why not
      return;
    }
    boolean set = job(session).filter(job -> job.limits().has(now.get().at())).isPresent();
    String text =
        now.get().volts() > 0
            ? new Amount(Quantity.VOLTAGE, now.get().volts()).text()
            : String.format(Locale.ROOT, "%s %%", 100 * now.get().fraction());
    new Form("limit")
        .line("limit", set ? text : "")
        .ask(over)
        .ifPresent(
            stated ->
                trying(
                    over,
                    () -> session.room(OpenJob.class).limit(stated.getOrDefault("limit", ""))));
  }

  private static MeasurementSetup setting(
      Session session, MeasurementSetup before, Map<String, String> stated) {
    String typed = stated.getOrDefault("ohms", "");
    Amount ohms =
        TypedAmounts.read(typed, Quantity.RESISTANCE)
            .only()
            .orElseThrow(() -> new IllegalArgumentException(Messages.of("meter.unread", typed)));
    String against = stated.getOrDefault("against", "");
    return new MeasurementSetup(
        against.isEmpty() ? "" : TypedLine.net(against, session.room(OpenJob.class).circuit()),
        new Instrument(
            stated.getOrDefault("name", ""),
            TypedSetup.requireInput(ohms.value(), typed),
            farads(stated.getOrDefault("farads", ""))),
        MeasurementSetup.Power.of(stated.getOrDefault("power", "on")),
        before.lifted(),
        stated.getOrDefault("words", ""));
  }

  public static void hypothesis(Component over, Session session) {
    String chosen =
        session
            .selection()
            .focus()
            .flatMap(SubjectQueries::partOf)
            .map(session.map()::nameOf)
            .orElse("");
    new Form("hypothesis")
        .line("what", "")
        .line("parts", chosen)
        .line("why", "")
        .line("test", "")
        .ask(over)
        .ifPresent(
            stated ->
                trying(
                    over,
                    () ->
                        session
                            .room(BenchNotes.class)
                            .suppose(
                                parts(session, stated.getOrDefault("parts", "")),
                                stated.getOrDefault("what", ""),
                                stated.getOrDefault("why", ""),
                                stated.getOrDefault("test", ""))));
  }

  /**
   * Parts as typed, with blanks or commas between them.
   *
   * @throws IllegalArgumentException with one sentence where one isn't in the map
   */
  public static List<PartId> parts(Session session, String typed) {
    List<PartId> parts = new ArrayList<>();
    for (String name : typed.split("[ ,]+")) {
      if (!name.isEmpty()) {
        parts.add(
            session.document().index().partsNamed(new Designator(name)).stream()
                .findFirst()
                .orElseThrow(
                    () -> new IllegalArgumentException(Messages.of("hypothesis.unknown", name)))
                .id());
      }
    }
    return parts;
  }

  /** Which parts the unit's photo on the desk shows, so that their cards show it. */
  public static void closeUp(Component over, Session session) {
    Optional<JobPhoto> own =
        session.desk().photo().flatMap(photo -> session.document().own(photo.id()));
    if (own.isEmpty()) {
      session.room(UnitPhotoEditor.class).sayNone();
      return;
    }
    String now =
        own.get().shows().stream().map(session.map()::nameOf).collect(Collectors.joining(" "));
    new Form("closeup")
        .line("parts", now)
        .ask(over)
        .ifPresent(
            stated ->
                trying(
                    over,
                    () ->
                        session
                            .room(UnitPhotoEditor.class)
                            .shows(own.get(), parts(session, stated.getOrDefault("parts", "")))));
  }

  public static void log(Component over, Session session) {
    List<String> kinds =
        Stream.of(LogEntry.Kind.values()).map(LogEntry.Kind::word).collect(Collectors.toList());
    List<Subject> about = about(session);
    String names = about.stream().map(session.map()::nameOf).collect(Collectors.joining(", "));
    new Form("log")
        .line("text", "")
        .choice("kind", kinds, "note")
        .choice(
            "about",
            names.isEmpty()
                ? List.of(Messages.of("log.unit"))
                : List.of(names, Messages.of("log.unit")),
            names)
        .ask(over)
        .ifPresent(
            stated ->
                trying(
                    over,
                    () ->
                        session
                            .room(BenchNotes.class)
                            .log(
                                LogEntry.Kind.of(stated.getOrDefault("kind", "note")),
                                stated.getOrDefault("about", "").equals(names) ? about : List.of(),
                                stated.getOrDefault("text", ""))));
  }

  /**
   * What a line of the log is about: all parts that are marked, as an area that was re-soldered in
   * one go; else the one that the eye is on.
   */
  private static List<Subject> about(Session session) {
    List<Subject> marked =
        session.selection().marked().stream()
            .flatMap(key -> SubjectQueries.partOf(key.subject()).stream())
            .distinct()
            .sorted()
            .<Subject>map(Subject::of)
            .toList();
    return marked.size() > 1
        ? marked
        : session
            .selection()
            .focus()
            .map(focus -> SubjectQueries.partOf(focus).<Subject>map(Subject::of).orElse(focus))
            .map(List::of)
            .orElse(List.of());
  }

  /** The next step of the usual order, to be ticked off with a note. */
  public static void checklist(Component over, Session session) {
    List<CheckStep> open =
        Stream.of(CheckStep.values())
            .filter(step -> job(session).flatMap(job -> job.mark(step)).isEmpty())
            .toList();
    if (open.isEmpty()) {
      return;
    }
    List<String> texts = open.stream().map(CheckStep::text).toList();
    new Form("checklist")
        .choice("step", texts, texts.get(0))
        .line("note", "")
        .ask(over)
        .ifPresent(
            stated ->
                trying(
                    over,
                    () ->
                        session
                            .room(OpenJob.class)
                            .apply(
                                JobTable.CHECKLIST.put(
                                    new CheckMark(
                                        open.get(
                                            Math.max(
                                                0, texts.indexOf(stated.getOrDefault("step", "")))),
                                        stated.getOrDefault("note", ""),
                                        session.room(OpenJob.class).author(),
                                        session.room(OpenJob.class).now())))));
  }

  /** What was filled in may not fit: then that is said, and nothing has changed. */
  private static void trying(Component over, Runnable deed) {
    try {
      deed.run();
    } catch (IllegalArgumentException unfit) {
      javax.swing.JOptionPane.showMessageDialog(
          over,
          new javax.swing.JLabel(String.valueOf(unfit.getMessage())),
          Messages.of("error.title"),
          javax.swing.JOptionPane.ERROR_MESSAGE);
    }
  }
}
