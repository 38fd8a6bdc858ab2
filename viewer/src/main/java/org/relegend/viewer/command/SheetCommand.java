package org.relegend.viewer.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.NodeName;
import org.relegend.circuit.NodeNameException;
import org.relegend.circuit.NodeNames;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.Subject;
import org.relegend.scan.Progress;
import org.relegend.sheet.FinishedSheets;
import org.relegend.sheet.JobSheets;
import org.relegend.sheet.MapSheets;
import org.relegend.sheet.PaperSize;
import org.relegend.store.JobFolder;
import org.relegend.store.JobMap;
import org.relegend.store.Json;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code sheet FOLDER FILE.pdf}. */
@Command(
    name = "sheet",
    description = {
      "Prints a map's bench sheets or a job's record to a PDF.",
      "Bench sheets of a map: the cautions, where it can hurt, the nodes with",
      "their pins, and for each node its pictures with numbers and empty boxes for readings.",
      "Record of a job: for the shop with everything, or for the customer in plain words."
    })
final class SheetCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "of a map or a job")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "FILE.pdf", description = "the file to print to")
  private Path file = Path.of("");

  @Option(
      names = "--paper",
      paramLabel = "a4|letter",
      converter = PaperWord.class,
      description = "a4 if not given")
  private PaperSize paper = PaperSize.A4;

  @Option(
      names = "--node",
      paramLabel = "NET",
      description = "only this node, or the node of a pin; may be given again")
  private List<String> nodes = new ArrayList<>();

  @Option(
      names = "--for",
      paramLabel = "customer|shop",
      converter = CopyWord.class,
      description = "of a job: whom the record is for; the shop if not given")
  private Optional<JobSheets.Copy> copy = Optional.empty();

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      converter = Day.class,
      description = "the date to print; today if not given. The same date gives the same bytes")
  private Optional<Instant> date = Optional.empty();

  /** Reads the words of {@code --paper}. */
  static final class PaperWord implements CommandLine.ITypeConverter<PaperSize> {
    @Override
    public PaperSize convert(String word) {
      try {
        return PaperSize.of(word);
      } catch (IllegalArgumentException unknown) {
        throw new CommandLine.TypeConversionException(String.valueOf(unknown.getMessage()));
      }
    }
  }

  /** Reads the words of {@code --for}. */
  static final class CopyWord implements CommandLine.ITypeConverter<JobSheets.Copy> {
    @Override
    public JobSheets.Copy convert(String word) {
      try {
        return JobSheets.Copy.of(word);
      } catch (IllegalArgumentException unknown) {
        throw new CommandLine.TypeConversionException(String.valueOf(unknown.getMessage()));
      }
    }
  }

  /** Reads the date of {@code --date}. */
  static final class Day implements CommandLine.ITypeConverter<Instant> {
    @Override
    public Instant convert(String word) {
      try {
        return LocalDate.parse(word).atStartOfDay(ZoneOffset.UTC).toInstant();
      } catch (java.time.DateTimeException odd) {
        throw new CommandLine.TypeConversionException(
            "\"%s\" is no date: write it like 2026-03-04".formatted(word));
      }
    }
  }

  private Instant printed() {
    return date.orElseGet(
        () ->
            LocalDate.ofInstant(Clock.systemUTC().instant(), ZoneOffset.UTC)
                .atStartOfDay(ZoneOffset.UTC)
                .toInstant());
  }

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    FinishedSheets.requireFree(file);
    FinishedSheets printed = JobFolder.isJob(folder) ? ofJob() : ofMap();
    printed.writeTo(file);
    return CommandResult.ok(
        () -> json(printed),
        out -> {
          out.println(
              "%s: %d %s"
                  .formatted(file, printed.pages(), printed.pages() == 1 ? "page" : "pages"));
          printed.troubles().forEach(trouble -> out.println("  " + trouble));
        });
  }

  private FinishedSheets ofMap() throws CommandFailure, StoreException {
    if (copy.isPresent()) {
      throw new CommandFailure(
          "--for: records are of a job, and %s holds a map; make a job with the command job"
              .formatted(folder));
    }
    MapFolder opened = openToRead(folder);
    Circuit circuit = Circuit.of(opened.map());
    return new MapSheets(circuit, opened::fileOf)
        .print(paper, chosen(circuit), printed(), Progress.UNWATCHED);
  }

  private FinishedSheets ofJob() throws CommandFailure, StoreException {
    if (!nodes.isEmpty()) {
      throw new CommandFailure(
          "--node: sheets of nodes are of a map, and %s holds a job; name the map's folder"
              .formatted(folder));
    }
    JobFolder opened = JobFolder.openReadOnly(folder);
    MapFolder under = openToRead(JobMap.of(opened));
    BoardMap map = under.map();
    return new JobSheets(
            opened.job(),
            Circuit.of(map),
            picture ->
                map.pictures().has(picture.id())
                    ? under.fileOf(picture)
                    : opened.path().resolve(picture.file()),
            ZoneId.systemDefault())
        .print(copy.orElse(JobSheets.Copy.SHOP), paper, printed());
  }

  private Json json(FinishedSheets printed) {
    return Json.object()
        .put("file", file.toString())
        .put("paper", paper.word())
        .put("pages", printed.pages())
        .put("troubles", Json.array(printed.troubles(), Json::of));
  }

  private List<NetId> chosen(Circuit circuit) throws CommandFailure {
    if (nodes.isEmpty()) {
      return MapSheets.allNodes(circuit.map());
    }
    NodeNames names = new NodeNames(circuit);
    List<NetId> chosen = new ArrayList<>();
    for (String node : nodes) {
      NetId net = net(circuit, names, node);
      if (!chosen.contains(net)) {
        chosen.add(net);
      }
    }
    return chosen;
  }

  private static NetId net(Circuit circuit, NodeNames names, String node) throws CommandFailure {
    BoardMap map = circuit.map();
    try {
      NodeName name = names.find(node);
      if (name instanceof NodeName.OfNet net) {
        return net.net();
      }
      if (name instanceof NodeName.OfPin pin) {
        List<NetId> nets = circuit.joined(pin.pin()).nets();
        if (nets.size() == 1) {
          return nets.get(0);
        }
        throw new CommandFailure(
            "--node %s: %s is on %s"
                .formatted(
                    node,
                    map.nameOf(Subject.of(pin.pin())),
                    nets.isEmpty()
                        ? "no net, so there is no node to print"
                        : "several nets; name one of them"));
      }
      throw new CommandFailure(
          "--node %s: only the drawing has this net; name the node of the board".formatted(node));
    } catch (NodeNameException unknown) {
      throw new CommandFailure("--node " + node + ": " + unknown.getMessage());
    }
  }
}
