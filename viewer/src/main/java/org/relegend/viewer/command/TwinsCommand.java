package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.relegend.circuit.Circuit;
import org.relegend.map.BoardMap;
import org.relegend.map.ChannelDeviation;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.Subject;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import org.relegend.twin.ProposedTwin;
import org.relegend.twin.TwinAcceptance;
import org.relegend.twin.TwinDifference;
import org.relegend.twin.TwinResult;
import org.relegend.twin.TwinSearch;
import org.relegend.twin.TwinSeed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twins FOLDER [--seed A=B ...] [--accept] [--mark PLACE=CAUSE ...]}. */
@Command(
    name = "twins",
    description = {
      "Finds the twins of a whole channel from a pair of them.",
      "Parts, sections and nets, how sure each pair is, and where the channels differ. Twins that the map holds are used too. With no seed and no",
      "twins in the map it looks for channels by itself.",
      "Exit code 1 where seeds contradict each other or the circuit."
    })
final class TwinsCommand extends JsonCommand {
  @Parameters(paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Option(
      names = "--seed",
      paramLabel = "A=B",
      description = "two that do the same work: R101=R201, U101/Ta=U201/Ta, net:IN_L=net:IN_R")
  private List<String> seeds = new ArrayList<>();

  @Option(
      names = "--accept",
      description = {
        "keep in the map what is sure: trust of 0.5 or more and no choice left open;",
        "refused where seeds contradict"
      })
  private boolean accept;

  @Option(
      names = "--mark",
      paramLabel = "PLACE=CAUSE",
      description = {
        "keep why the channels differ at a part or pin: R225=design, fault or repair;",
        "may be given again"
      })
  private List<String> marks = new ArrayList<>();

  @Mixin private AuthorOption author = new AuthorOption();

  @Mixin private KindsOption kinds = new KindsOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException, EditRefusedException {
    if (!accept && marks.isEmpty()) {
      try (MapFolder opened = openToRead(folder)) {
        return result(opened.map(), found(opened.map()), 0);
      }
    }
    try (MapFolder opened = openToChange(folder)) {
      List<TwinResult> found = found(opened.map());
      if (accept && found.stream().anyMatch(twins -> !twins.contradictions().isEmpty())) {
        throw CommandFailure.doesNotHold(
            "nothing was accepted, since "
                + new TwinsText(opened.map()).contradiction(found.get(0).contradictions().get(0)));
      }
      List<Edit> edits = accept ? edits(opened.map(), found) : List.of();
      List<Edit> all = new ArrayList<>(edits);
      for (String mark : marks) {
        all.add(mark(opened.map(), found, mark));
      }
      if (!all.isEmpty()) {
        opened.save(new EditGroup("Accept twins", all).applyTo(opened.map()));
      }
      return result(opened.map(), found, edits.size());
    }
  }

  private List<TwinResult> found(BoardMap map) throws CommandFailure {
    Circuit circuit = kinds.circuit(map);
    TwinSearch search = TwinSearch.of(circuit);
    try {
      List<TwinSeed> given = new ArrayList<>();
      for (String seed : seeds) {
        given.add(seed(new SubjectName(circuit), seed));
      }
      List<TwinSeed> known = search.known();
      if (!given.isEmpty() || !known.isEmpty()) {
        return List.of(search.from(given, known));
      }
      List<TwinResult> found = new ArrayList<>();
      for (TwinSeed seed : search.proposed()) {
        found.add(search.from(List.of(seed)));
      }
      return found;
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private static TwinSeed seed(SubjectName names, String text) throws CommandFailure {
    String[] sides = text.split("=", -1);
    if (sides.length != 2 || sides[0].isBlank() || sides[1].isBlank()) {
      throw new CommandFailure(
          "--seed \"%s\" is no pair: write it as A=B, like R101=R201".formatted(text));
    }
    return new TwinSeed(subject(names, sides[0].strip()), subject(names, sides[1].strip()));
  }

  private static Subject subject(SubjectName names, String word) throws CommandFailure {
    return names.find(word.startsWith("net:") ? word.substring(4) : word);
  }

  /** The mark on the difference that this part or pin is in. */
  private Edit mark(BoardMap map, List<TwinResult> found, String text) throws CommandFailure {
    String[] sides = text.split("=", -1);
    if (sides.length != 2 || sides[0].isBlank()) {
      throw new CommandFailure(
          "--mark \"%s\": write it as PLACE=CAUSE, like R225=design".formatted(text));
    }
    Subject place = subject(new SubjectName(kinds.circuit(map)), sides[0].strip());
    for (TwinResult twins : found) {
      for (TwinDifference difference : twins.differences()) {
        if (difference.a().contains(place) || difference.b().contains(place)) {
          try {
            ChannelDeviation.Cause cause = ChannelDeviation.Cause.of(sides[1]);
            return TwinAcceptance.mark(difference, cause, author.attestation(Evidence.INFERRED));
          } catch (IllegalArgumentException unknown) {
            throw new CommandFailure("--mark \"%s\": %s".formatted(text, unknown.getMessage()));
          }
        }
      }
    }
    throw new CommandFailure(
        "--mark \"%s\": the channels were not found to differ there".formatted(text));
  }

  private List<Edit> edits(BoardMap map, List<TwinResult> found) {
    List<ProposedTwin> pairs = found.stream().flatMap(twins -> twins.pairs().stream()).toList();
    return TwinAcceptance.ofAll(map, pairs, author.attestation(Evidence.MATCHED));
  }

  private static CommandResult result(BoardMap map, List<TwinResult> found, int accepted) {
    TwinsText text = new TwinsText(map);
    boolean holds = found.stream().allMatch(twins -> twins.contradictions().isEmpty());
    return new CommandResult(
        holds ? ExitCode.OK : ExitCode.DOES_NOT_HOLD,
        () -> text.json(found, accepted),
        out -> text.print(out, found, accepted));
  }
}
