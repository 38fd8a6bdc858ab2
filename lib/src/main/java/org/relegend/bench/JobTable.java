package org.relegend.bench;

import java.util.List;
import java.util.function.Function;
import org.relegend.map.DocumentTable;
import org.relegend.map.Keyed;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;

/**
 * One table of the job, with its edits; and the list of them all. A new table is a constant here
 * with its number, and a word in {@link #ALL}.
 */
public final class JobTable<K extends Comparable<? super K>, V extends Keyed<K>>
    extends DocumentTable<Job, K, V> {
  public static final JobTable<PictureId, JobPhoto> PHOTOS =
      new JobTable<>(0, "photos", photo -> "Photo " + photo.key(), key -> "Remove photo " + key);
  public static final JobTable<PartId, Condition> CONDITIONS =
      new JobTable<>(
          1,
          "conditions",
          condition -> "Condition of " + condition.part(),
          key -> "Forget condition of " + key);
  public static final JobTable<EntryId, Reading> READINGS =
      new JobTable<>(
          2, "readings", reading -> "Reading at " + reading.at(), key -> "Remove reading " + key);
  public static final JobTable<Subject, NodeLimit> LIMITS =
      new JobTable<>(
          3, "limits", limit -> "Limit at " + limit.at(), key -> "Usual limit at " + key);
  public static final JobTable<EntryId, Hypothesis> HYPOTHESES =
      new JobTable<>(
          4,
          "hypotheses",
          hypothesis -> "Hypothesis " + hypothesis.id(),
          key -> "Remove hypothesis " + key);
  public static final JobTable<CheckStep, CheckMark> CHECKLIST =
      new JobTable<>(
          5, "checklist", mark -> "Tick " + mark.step().word(), key -> "Untick " + key.word());
  public static final JobTable<EntryId, LogEntry> LOG =
      new JobTable<>(
          6, "log", entry -> "Note in the log", key -> "Remove line %s of the log".formatted(key));

  /** All of them, in the order of the file. */
  public static final List<JobTable<?, ?>> ALL =
      List.of(PHOTOS, CONDITIONS, READINGS, LIMITS, HYPOTHESES, CHECKLIST, LOG);

  private final Function<V, String> putLabel;
  private final Function<K, String> removeLabel;

  private JobTable(
      int position, String word, Function<V, String> putLabel, Function<K, String> removeLabel) {
    super(position, word);
    this.putLabel = putLabel;
    this.removeLabel = removeLabel;
  }

  /** The edit that adds an entry, or puts it in the place of the one with its key. */
  public JobEdit put(V entry) {
    return new JobEdit.Put<>(this, entry);
  }

  /** The edit that takes an entry away. */
  public JobEdit remove(K key) {
    return new JobEdit.Remove<>(this, key);
  }

  @Override
  protected String putLabel(Job job, V entry) {
    return putLabel.apply(entry);
  }

  @Override
  protected String removeLabel(Job job, K key) {
    return removeLabel.apply(key);
  }
}
