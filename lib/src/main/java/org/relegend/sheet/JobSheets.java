package org.relegend.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.relegend.bench.Job;
import org.relegend.bench.OwnPhotos;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.Picture;
import org.relegend.store.MapFormat;

/** The records of a job that are handed out: one for who owns the unit, one for the shop. */
public final class JobSheets {
  /** Whom a record is for. */
  public enum Copy {
    /** What was done and measured, in plain words; nothing of what was thought on the way. */
    CUSTOMER,
    /** Everything. */
    SHOP;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads "customer" or "shop".
     *
     * @throws IllegalArgumentException where it is neither
     */
    public static Copy of(String word) {
      return Stream.of(values())
          .filter(copy -> copy.word().equals(word.toLowerCase(Locale.ROOT)))
          .findFirst()
          .orElseThrow(
              () ->
                  new IllegalArgumentException(
                      "a record is for one of %s, not for \"%s\""
                          .formatted(
                              Stream.of(values()).map(Copy::word).collect(Collectors.joining(", ")),
                              word)));
    }
  }

  private final Job job;
  private final Circuit circuit;
  private final Function<Picture, Path> files;
  private final ZoneId zone;

  /**
   * Records of one job.
   *
   * @param circuit of the map it lies over
   * @param files where the file of a picture is, one of the map or one of the job's photos
   * @param zone by whose clock days and times are printed
   */
  public JobSheets(Job job, Circuit circuit, Function<Picture, Path> files, ZoneId zone) {
    this.job = job;
    this.circuit = circuit;
    this.files = files;
    this.zone = zone;
  }

  /**
   * Prints.
   *
   * @param printed the date that is printed, so that the same call gives the same bytes
   */
  public FinishedSheets print(Copy copy, PaperSize paper, Instant printed) {
    JobFacts facts = JobFacts.of(job, circuit, zone);
    String digest = MapFormat.digest(circuit.map());
    try (SheetDocument press = new SheetDocument(paper)) {
      PageFlow flow = new PageFlow(press);
      BoardMap shown = OwnPhotos.printed(circuit.map(), job.photos());
      CutOuts cutOuts = new CutOuts(shown, files);
      CloseUps closeUps = new CloseUps(facts, cutOuts);
      String title = circuit.map().info().title();
      if (copy == Copy.CUSTOMER) {
        new CustomerRecord(flow, facts).draw(closeUps);
      } else {
        new ShopRecord(flow, facts, digest).draw(shown, cutOuts, closeUps, printed);
      }
      byte[] pdf =
          press.finish(
              title + " - repair record",
              List.of(title, copy == Copy.CUSTOMER ? "Repair record" : "Shop copy - private"),
              copy == Copy.CUSTOMER
                  ? "job %s · printed %s".formatted(job.id(), facts.day(printed))
                  : "job %s · %s"
                      .formatted(job.id(), Provenance.line(circuit.map(), digest, printed)),
              printed);
      return new FinishedSheets(pdf, press.pages(), cutOuts.troubles());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
