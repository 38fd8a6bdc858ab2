package org.relegend.bench;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.relegend.map.NameRules;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;
import org.relegend.map.Table;
import org.relegend.map.TabledDocument;
import org.relegend.map.Tables;

/**
 * The bench job: all that is true of one unit. A value: every change is a {@link JobEdit} and gives
 * a new job that shares what didn't change. Private: no part of it goes into a map.
 *
 * @param id what this job is known by
 * @param instrument what readings are taken with while nothing else is said
 * @param tables all else: {@link JobTable} lists them
 */
public record Job(
    String id, MapLink map, IntakeRecord intake, Instrument instrument, Tables<Job> tables)
    implements TabledDocument<Job> {
  public Job {
    NameRules.checkedToken("job id", id);
  }

  /** A job with nothing in it yet. */
  public static Job empty(String id, MapLink map) {
    return new Job(
        id, map, IntakeRecord.EMPTY, Instrument.UNKNOWN, Tables.empty(JobTable.ALL.size()));
  }

  public Table<PictureId, JobPhoto> photos() {
    return tables.get(JobTable.PHOTOS);
  }

  public Table<PartId, Condition> conditions() {
    return tables.get(JobTable.CONDITIONS);
  }

  public Table<EntryId, Reading> readings() {
    return tables.get(JobTable.READINGS);
  }

  public Table<Subject, NodeLimit> limits() {
    return tables.get(JobTable.LIMITS);
  }

  public Table<EntryId, Hypothesis> hypotheses() {
    return tables.get(JobTable.HYPOTHESES);
  }

  public Table<CheckStep, CheckMark> checklist() {
    return tables.get(JobTable.CHECKLIST);
  }

  public Table<EntryId, LogEntry> log() {
    return tables.get(JobTable.LOG);
  }

  public Optional<Condition> condition(PartId part) {
    return conditions().find(part);
  }

  /** The limit at a node: the one set for it, or the usual one. */
  public NodeLimit limit(Subject at) {
    return limits().find(at).orElseGet(() -> NodeLimit.usual(at));
  }

  /** The number for the next reading. */
  public EntryId nextReading() {
    return next(readings().isEmpty() ? 0 : readings().at(readings().size() - 1).id().number());
  }

  /** The number for the next hypothesis. */
  public EntryId nextHypothesis() {
    return next(
        hypotheses().isEmpty() ? 0 : hypotheses().at(hypotheses().size() - 1).id().number());
  }

  /** The number for the next line of the log(). */
  public EntryId nextLog() {
    return next(log().isEmpty() ? 0 : log().at(log().size() - 1).id().number());
  }

  private static EntryId next(int last) {
    return new EntryId(last + 1);
  }

  /** When something was last repaired; before all time where nothing was. */
  public Instant lastRepair() {
    return log().stream()
        .filter(entry -> entry.kind() == LogEntry.Kind.REPAIR)
        .map(LogEntry::at)
        .max(Instant::compareTo)
        .orElse(Instant.MIN);
  }

  /** The readings that hold for the unit as it is now: those since the last repair. */
  public List<Reading> currentReadings() {
    Instant since = lastRepair();
    return readings().stream().filter(reading -> !reading.taken().isBefore(since)).toList();
  }

  /** The readings taken before the first repair: the unit as it came. */
  public List<Reading> readingsAsFound() {
    Optional<Instant> first =
        log().stream()
            .filter(entry -> entry.kind() == LogEntry.Kind.REPAIR)
            .map(LogEntry::at)
            .min(Instant::compareTo);
    return readings().stream()
        .filter(reading -> first.isEmpty() || reading.taken().isBefore(first.get()))
        .toList();
  }

  public List<Reading> readingsAt(Subject at) {
    return readings().stream().filter(reading -> reading.at().equals(at)).toList();
  }

  public Optional<CheckMark> mark(CheckStep step) {
    return checklist().find(step);
  }

  /** The first step of the checklist that isn't done; empty when all are. */
  public Optional<CheckStep> nextStep() {
    return java.util.Arrays.stream(CheckStep.values())
        .filter(step -> !checklist().has(step))
        .findFirst();
  }

  public Job withMap(MapLink changed) {
    return new Job(id, changed, intake, instrument, tables);
  }

  public Job withIntake(IntakeRecord changed) {
    return new Job(id, map, changed, instrument, tables);
  }

  public Job withInstrument(Instrument changed) {
    return new Job(id, map, intake, changed, tables);
  }

  @Override
  public Job withTables(Tables<Job> changed) {
    return new Job(id, map, intake, instrument, changed);
  }
}
