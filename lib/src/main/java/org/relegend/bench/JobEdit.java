package org.relegend.bench;

import java.util.List;
import org.relegend.map.DocumentEdit;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Keyed;
import org.relegend.map.TextRules;

/** One change of a job. */
public sealed interface JobEdit extends DocumentEdit<Job> {
  /** Adds an entry to a table, or puts it in the place of the one with its key. */
  record Put<K extends Comparable<? super K>, V extends Keyed<K>>(JobTable<K, V> table, V entry)
      implements JobEdit {
    @Override
    public String label(Job job) {
      return table.putLabel(job, entry);
    }

    @Override
    public Job applyTo(Job job) throws EditRefusedException {
      return table.put(job, List.of(entry));
    }
  }

  /** Takes an entry out of a table. */
  record Remove<K extends Comparable<? super K>, V extends Keyed<K>>(JobTable<K, V> table, K key)
      implements JobEdit {
    @Override
    public String label(Job job) {
      return table.removeLabel(job, key);
    }

    @Override
    public Job applyTo(Job job) throws EditRefusedException {
      return table.remove(job, key);
    }
  }

  /** Puts this in the place of the one before. */
  record ChangeIntake(IntakeRecord intake) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Change the intake";
    }

    @Override
    public Job applyTo(Job job) {
      return job.withIntake(intake);
    }
  }

  /** Puts this in the place of the one before. */
  record ChangeInstrument(Instrument instrument) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Change the usual instrument";
    }

    @Override
    public Job applyTo(Job job) {
      return job.withInstrument(instrument);
    }
  }

  /** Puts this in the place of the one before. */
  record LinkMap(MapLink map) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Tie the job to the map as it is now";
    }

    @Override
    public Job applyTo(Job job) {
      return job.withMap(map);
    }
  }

  /** Several edits made as one: all of them, or none. */
  record Group(String title, List<JobEdit> steps) implements JobEdit {
    public Group {
      TextRules.line("label", title);
      steps = List.copyOf(steps);
    }

    @Override
    public String label(Job job) {
      return title;
    }

    @Override
    public Job applyTo(Job job) throws EditRefusedException {
      Job changed = job;
      for (JobEdit step : steps) {
        changed = step.applyTo(changed);
      }
      return changed;
    }
  }
}
