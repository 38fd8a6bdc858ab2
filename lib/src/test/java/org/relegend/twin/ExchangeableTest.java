package org.relegend.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.GraphMapping;
import org.jgrapht.alg.isomorphism.VF2GraphIsomorphismInspector;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.FourBitAdder;
import org.relegend.map.BoardMap;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/**
 * What is left as a group can be exchanged indeed, and what can be exchanged is in a group: checked
 * on the published adder's bit cell against all of its automorphisms, as the graph library's exact
 * matcher (VF2) lists them. Their number, 1152, is in the reference notes on standards, section 9.
 */
class ExchangeableTest {
  private static final int AUTOMORPHISMS = 1152;

  /** A part, or a net as the part it isn't. */
  private record Node(String name, String look) {}

  /** A pin; ends of a resistor have one role. */
  private static final class Wire {
    private final String role;

    private Wire(String role) {
      this.role = role;
    }
  }

  private static final List<Map<String, String>> ALL = new ArrayList<>();

  @BeforeAll
  static void listAll() {
    Graph<Node, Wire> cell = graph(FourBitAdder.oneBit());
    Iterator<GraphMapping<Node, Wire>> mappings =
        new VF2GraphIsomorphismInspector<>(
                cell,
                cell,
                Comparator.comparing(Node::look),
                Comparator.comparing((Wire wire) -> wire.role))
            .getMappings();
    while (mappings.hasNext()) {
      GraphMapping<Node, Wire> mapping = mappings.next();
      Map<String, String> names = new TreeMap<>();
      for (Node node : cell.vertexSet()) {
        names.put(node.name(), mapping.getVertexCorrespondence(node, true).name());
      }
      ALL.add(names);
    }
  }

  private static Graph<Node, Wire> graph(BoardMap map) {
    Graph<Node, Wire> graph = new SimpleGraph<>(Wire.class);
    Map<String, Node> parts = new TreeMap<>();
    for (Part part : map.parts()) {
      Node node = new Node(part.note(), part.kind() + " " + part.value());
      parts.put(part.id().text(), node);
      graph.addVertex(node);
    }
    for (Net net : map.nets()) {
      String name = net.id().text();
      Node node = new Node("net " + name, name.equals("0") ? "ground" : "net");
      graph.addVertex(node);
      net.pins()
          .forEach(
              pin ->
                  graph.addEdge(
                      parts.get(pin.part().text()),
                      node,
                      new Wire(pin.part().text().startsWith("R") ? "end" : pin.pin())));
    }
    return graph;
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(strings = {".X4.RC", ".X2.Q3", ".X9.R1", ".X8.R1", ".X1.D1CLAMP", ".X5.D1CLAMP"})
  void groups_areWhatAutomorphismsExchange(String seed) {
    assertThat(ALL).hasSize(AUTOMORPHISMS);
    Map<String, Set<String>> exchangeable = new TreeMap<>();
    for (Map<String, String> mapping : ALL) {
      if (mapping.get("X1" + seed).equals("X1" + seed)) {
        mapping.forEach((a, b) -> exchangeable.computeIfAbsent(a, name -> new TreeSet<>()).add(b));
      }
    }
    for (String to : List.of("X1.X1.X1", "X1.X2.X1")) {
      Map<String, Set<String>> stated = text(seed, "X1.X1.X2", to);
      assertThat(stated).hasSize(108);
      stated.forEach(
          (inner, twins) -> assertThat(twins).as(inner).isEqualTo(exchangeable.get(inner)));
    }
  }

  /** By its name within the cell, what each part's twin may be. */
  private static Map<String, Set<String>> text(String seed, String from, String to) {
    MapGraph map = new MapGraph(Circuit.of(FourBitAdder.map()));
    PinGraphSearch search = new PinGraphSearch(map.graph, PinGraphSearch.rings(map.graph, true));
    search.seed(number(map, from + seed), number(map, to + seed));
    search.run();
    TwinAssignment pairing = search.pairing();
    Map<String, Set<String>> stated = new TreeMap<>();
    for (String inner : FourBitAdderTwinsTest.inner()) {
      int first = number(map, from + inner);
      Set<String> names = new TreeSet<>();
      pairing.seconds(first).forEach(second -> names.add(inner(map, second, to)));
      stated.put("X1" + inner, names);
    }
    return stated;
  }

  private static int number(MapGraph map, String path) {
    return map.element(FourBitAdderTwinsTest.part(path)).orElseThrow();
  }

  private static String inner(MapGraph map, int e, String cell) {
    Subject.OfPart part = (Subject.OfPart) map.graph.subjects.get(e);
    String path = map.circuit.map().part(part.part()).map(Part::note).orElse("");
    assertThat(path).startsWith(cell + ".");
    return "X1" + path.substring(cell.length());
  }
}
