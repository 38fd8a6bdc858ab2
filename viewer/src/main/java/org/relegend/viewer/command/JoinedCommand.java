package org.relegend.viewer.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.JoinedList;
import org.relegend.circuit.JoinedPin;
import org.relegend.circuit.NodeName;
import org.relegend.circuit.NodeNameException;
import org.relegend.circuit.NodeNames;
import org.relegend.circuit.Passage;
import org.relegend.circuit.PassageOptions;
import org.relegend.lineup.PlacementCarrier;
import org.relegend.map.BoardMap;
import org.relegend.map.Designator;
import org.relegend.map.Evidence;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Subject;
import org.relegend.store.Json;
import org.relegend.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code joined FOLDER NET-or-PART.PIN}. */
@Command(
    name = "joined",
    description = {
      "Lists every part joined at a node, as the copper has it, and where each is.",
      "Where the drawing says otherwise, the list says so."
    })
final class JoinedCommand extends JsonCommand {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "the map's folder")
  private Path folder = Path.of("");

  @Parameters(index = "1", paramLabel = "NODE", description = "a net, or a pin as PART.PIN")
  private String node = "";

  @Option(
      names = "--through",
      split = ",",
      paramLabel = "KIND",
      converter = PassageWord.class,
      description = "also through connector, link, zero-ohm, fuse, switch, relay")
  private Set<Passage> through = EnumSet.noneOf(Passage.class);

  @Option(names = "--extended", description = "through all of those kinds")
  private boolean extended;

  @Option(
      names = "--at",
      paramLabel = "PART=POSITION",
      description = "how a switch or relay stands, as SW1=on or SW1=open; may be given again")
  private Map<String, String> positions = new TreeMap<>();

  /** Reads the words of {@code --through}. */
  static final class PassageWord implements CommandLine.ITypeConverter<Passage> {
    @Override
    public Passage convert(String word) {
      for (Passage passage : Passage.values()) {
        if (passage.word().equals(word)) {
          return passage;
        }
      }
      throw new CommandLine.TypeConversionException(
          "\"%s\" is none of connector, link, zero-ohm, fuse, switch, relay".formatted(word));
    }
  }

  @Mixin private KindsOption kinds = new KindsOption();

  @Override
  CommandResult answer() throws CommandFailure, StoreException {
    BoardMap map = openToRead(folder).map();
    PlacementCarrier carrier = PlacementCarrier.of(map);
    Circuit circuit = kinds.circuit(map);
    try {
      NodeName name = new NodeNames(circuit).find(node);
      JoinedList joined = circuit.joined(name, passing(circuit));
      String title = name instanceof NodeName.OfPin pin ? map.nameOf(Subject.of(pin.pin())) : node;
      String shown = name instanceof NodeName.OfNet net ? map.nameOf(Subject.of(net.net())) : title;
      return CommandResult.ok(
          () -> json(map, shown, joined, carrier),
          out -> new JoinedText(map, shown, joined, carrier).print(out));
    } catch (NodeNameException unknown) {
      throw new CommandFailure(String.valueOf(unknown.getMessage()));
    } catch (IllegalArgumentException unfit) {
      throw new CommandFailure(String.valueOf(unfit.getMessage()));
    }
  }

  private PassageOptions passing(Circuit circuit) throws CommandFailure {
    PassageOptions passing =
        extended ? PassageOptions.ALL : PassageOptions.of(through.toArray(Passage[]::new));
    for (Map.Entry<String, String> position : positions.entrySet()) {
      List<Part> parts = circuit.index().partsNamed(new Designator(position.getKey()));
      if (parts.size() != 1) {
        throw new CommandFailure(
            "--at %s: the map has %d parts of that designator, so how it stands can't be said"
                .formatted(position.getKey(), parts.size()));
      }
      passing = passing.withPosition(parts.get(0).id(), position.getValue());
    }
    return passing;
  }

  private static Json json(BoardMap map, String node, JoinedList joined, PlacementCarrier carrier) {
    return Json.object()
        .put("node", node)
        .put("nets", Json.array(joined.nets(), net -> Json.of(name(map, net))))
        .put("pins", Json.array(joined.pins(), pin -> pin(map, pin, carrier)))
        .put(
            "drawnHere",
            Json.array(
                joined.alsoDrawnHere(),
                pin ->
                    Json.object()
                        .put("pin", pin.designator() + "." + pin.pin().pin())
                        .put("net", nets(map, pin))));
  }

  private static Json pin(BoardMap map, JoinedPin pin, PlacementCarrier carrier) {
    Json.Obj object =
        Json.object()
            .put("part", pin.designator())
            .put("section", String.join("+", pin.sections()))
            .put("pin", pin.pin().pin())
            .put("role", pin.role())
            .put("kind", pin.part().map(Part::kind).orElse(""))
            .put("value", pin.value())
            .put("board", pin.board().map(Object::toString).orElse(""))
            .put("net", nets(map, pin));
    Optional<Evidence> evidence = pin.evidence();
    if (evidence.isPresent()) {
      object = object.put("evidence", evidence.get().word());
    }
    object =
        object
            .put("placements", Json.array(pin.placements(), PlacementText::json))
            .put("carried", Json.array(carrier.of(Subject.of(pin.pin())), PlacementText::json))
            .put("twins", Json.array(pin.twins(), twin -> Json.of(map.nameOf(twin))))
            .put("through", Json.array(passed(map, pin), Json::of));
    return pin.drawn().isPresent() ? object.put("drawn", drawn(map, pin)) : object;
  }

  static List<String> passed(BoardMap map, JoinedPin pin) {
    List<String> parts = new ArrayList<>();
    pin.through()
        .forEach(
            pass -> {
              add(parts, map, pass.in().part());
              add(parts, map, pass.out().part());
            });
    return parts;
  }

  private static void add(List<String> parts, BoardMap map, PartId part) {
    String name = map.nameOf(part);
    if (parts.isEmpty() || !parts.get(parts.size() - 1).equals(name)) {
      parts.add(name);
    }
  }

  static String nets(BoardMap map, JoinedPin pin) {
    return pin.nets().stream().map(net -> name(map, net)).collect(Collectors.joining("+"));
  }

  static String drawn(BoardMap map, JoinedPin pin) {
    return pin.drawn()
        .map(discrepancy -> discrepancy.drawn())
        .map(net -> net.isEmpty() ? net : name(map, new NetId(net)))
        .orElse("");
  }

  private static String name(BoardMap map, NetId net) {
    return map.nameOf(Subject.of(net));
  }
}
