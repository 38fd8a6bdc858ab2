package org.relegend.bench;

import java.util.List;
import org.relegend.map.DocumentEdit;
import org.relegend.map.EditRefusedException;
import org.relegend.map.PartId;
import org.relegend.map.PictureId;
import org.relegend.map.Subject;
import org.relegend.map.Texts;

/** One change of a job. */
public sealed interface JobEdit extends DocumentEdit<Job> {
  /** Adds it, or puts it in the place of the one with its key. */
  record PutPhoto(JobPhoto photo) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Photo " + photo.key();
    }

    @Override
    public Job applyTo(Job job) {
      return job.withPhotos(job.photos().with(photo));
    }
  }

  /** Takes it away. */
  record RemovePhoto(PictureId key) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Remove photo " + key;
    }

    @Override
    public Job applyTo(Job job) {
      return job.withPhotos(job.photos().without(key));
    }
  }

  /** Adds it, or puts it in the place of the one with its key. */
  record PutCondition(Condition condition) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Condition of " + condition.part();
    }

    @Override
    public Job applyTo(Job job) {
      return job.withConditions(job.conditions().with(condition));
    }
  }

  /** Takes it away. */
  record RemoveCondition(PartId key) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Forget condition of " + key;
    }

    @Override
    public Job applyTo(Job job) {
      return job.withConditions(job.conditions().without(key));
    }
  }

  /** Adds it, or puts it in the place of the one with its key. */
  record PutReading(Reading reading) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Reading at " + reading.at();
    }

    @Override
    public Job applyTo(Job job) {
      return job.withReadings(job.readings().with(reading));
    }
  }

  /** Takes it away. */
  record RemoveReading(EntryId key) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Remove reading " + key;
    }

    @Override
    public Job applyTo(Job job) {
      return job.withReadings(job.readings().without(key));
    }
  }

  /** Adds it, or puts it in the place of the one with its key. */
  record PutLimit(NodeLimit limit) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Limit at " + limit.at();
    }

    @Override
    public Job applyTo(Job job) {
      return job.withLimits(job.limits().with(limit));
    }
  }

  /** Takes it away. */
  record RemoveLimit(Subject key) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Usual limit at " + key;
    }

    @Override
    public Job applyTo(Job job) {
      return job.withLimits(job.limits().without(key));
    }
  }

  /** Adds it, or puts it in the place of the one with its key. */
  record PutHypothesis(Hypothesis hypothesis) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Hypothesis " + hypothesis.id();
    }

    @Override
    public Job applyTo(Job job) {
      return job.withHypotheses(job.hypotheses().with(hypothesis));
    }
  }

  /** Takes it away. */
  record RemoveHypothesis(EntryId key) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Remove hypothesis " + key;
    }

    @Override
    public Job applyTo(Job job) {
      return job.withHypotheses(job.hypotheses().without(key));
    }
  }

  /** Adds it, or puts it in the place of the one with its key. */
  record PutMark(CheckMark mark) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Tick " + mark.step().word();
    }

    @Override
    public Job applyTo(Job job) {
      return job.withChecklist(job.checklist().with(mark));
    }
  }

  /** Takes it away. */
  record RemoveMark(CheckStep key) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Untick " + key.word();
    }

    @Override
    public Job applyTo(Job job) {
      return job.withChecklist(job.checklist().without(key));
    }
  }

  /** Adds it, or puts it in the place of the one with its key. */
  record PutLog(LogEntry entry) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Note in the log";
    }

    @Override
    public Job applyTo(Job job) {
      return job.withLog(job.log().with(entry));
    }
  }

  /** Takes it away. */
  record RemoveLog(EntryId key) implements JobEdit {
    @Override
    public String label(Job job) {
      return "Remove line %s of the log".formatted(key);
    }

    @Override
    public Job applyTo(Job job) {
      return job.withLog(job.log().without(key));
    }
  }

  /** Puts this in the place of the one before. */
  record ChangeIntake(Intake intake) implements JobEdit {
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
      Texts.line("label", title);
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
