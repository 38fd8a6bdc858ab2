package org.relegend.twin;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.relegend.circuit.Circuit;
import org.relegend.circuit.FourBitAdder;
import org.relegend.map.BoardMap;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/**
 * The published four-bit adder (reference notes on standards, section 9): four bit cells of 108
 * parts each, one behind the other along the carry. Truth are the parts' hierarchical names.
 */
class FourBitAdderTwinsTest {
  static final List<String> CELLS = List.of("X1.X1.X1", "X1.X1.X2", "X1.X2.X1", "X1.X2.X2");
  private static final BoardMap MAP = FourBitAdder.map();
  private static final Map<Subject, String> PATHS = paths();
  private static final TwinSearch SEARCH = TwinSearch.of(Circuit.of(MAP));

  private static Map<Subject, String> paths() {
    Map<Subject, String> paths = new TreeMap<>();
    MAP.parts().forEach(part -> paths.put(Subject.of(part.id()), part.note()));
    return paths;
  }

  /** The parts of a bit cell by their names within it. */
  static List<String> inner() {
    List<String> inner = new ArrayList<>();
    for (Part part : MAP.parts()) {
      if (part.note().startsWith(CELLS.get(0) + ".")) {
        inner.add(part.note().substring(CELLS.get(0).length()));
      }
    }
    return inner;
  }

  static List<List<String>> choices() {
    List<List<String>> choices = new ArrayList<>();
    for (String first : CELLS) {
      for (String second : CELLS) {
        if (!first.equals(second)) {
          choices.add(List.of(first, second));
        }
      }
    }
    return choices;
  }

  static Subject part(String path) {
    return Subject.of(FourBitAdder.part(path));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("choices")
  void onePair_givesEveryPartOfTheCell(List<String> cells) {
    for (String seed : List.of(".X2.Q3", ".X3.R1")) {
      TwinResult twins =
          SEARCH.from(List.of(new TwinSeed(part(cells.get(0) + seed), part(cells.get(1) + seed))));
      assertThat(twins.contradictions()).as(seed).isEmpty();
      Map<Subject, ProposedTwin> found = new TreeMap<>();
      for (ProposedTwin pair : twins.pairs()) {
        found.put(pair.a(), pair);
      }
      for (String inner : inner()) {
        ProposedTwin pair = found.get(part(cells.get(0) + inner));
        Subject truth = part(cells.get(1) + inner);
        assertThat(pair).as("seed %s, %s", seed, inner).isNotNull();
        if (pair.basis() == TwinBasis.ONE_OF_SEVERAL) {
          assertThat(twins.groups())
              .as(inner)
              .anyMatch(group -> group.a().contains(pair.a()) && group.b().contains(truth));
          assertThat(inner).as("only clamps in parallel are several").endsWith("CLAMP");
        } else {
          assertThat(pair.b()).as("seed %s, %s", seed, inner).isEqualTo(truth);
        }
      }
      assertNoPairIsWrong(twins);
      assertThat(twins.common()).contains(Subject.parse("net:0"), Subject.parse("net:99"));
    }
  }

  /** Also outside of the cell: a pair has one name within two cells, or is a source or a load. */
  private static void assertNoPairIsWrong(TwinResult twins) {
    for (ProposedTwin pair : twins.pairs()) {
      String a = PATHS.getOrDefault(pair.a(), "");
      String b = PATHS.getOrDefault(pair.b(), "");
      if (pair.a() instanceof Subject.OfPart && pair.basis() != TwinBasis.ONE_OF_SEVERAL) {
        String innerA = a.replaceFirst("^X1\\.X[12]\\.X[12]\\.", "");
        String innerB = b.replaceFirst("^X1\\.X[12]\\.X[12]\\.", "");
        boolean outside = a.matches("VIN\\d[AB]") && b.matches("VIN\\d[AB]");
        outside |= a.matches("R(BIT\\d|COUT)") && b.matches("R(BIT\\d|COUT)");
        assertThat(innerA.equals(innerB) || outside).as("%s = %s", a, b).isTrue();
      }
    }
  }
}
