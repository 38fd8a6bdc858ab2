package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** That the tables of types hold together: what each row must have, whatever it says. */
class PartTypesTest {
  private static final PartTypes TYPES = PartTypes.standard();

  private static Stream<PartTypes.Row> numbered() {
    return TYPES.rows().stream().filter(row -> !row.pinout().terminals().isEmpty());
  }

  @Test
  void rows_areEnoughOfEachFamily() {
    assertThat(TYPES.rows().stream().map(PartTypes.Row::type).distinct().count())
        .isGreaterThan(350);
    assertThat(numbered().map(PartTypes.Row::type).distinct().count()).isGreaterThan(350);
  }

  @Test
  void eachRow_namesItsSourceAndAKindThatIsKnown() {
    for (PartTypes.Row row : TYPES.rows()) {
      assertThat(row.pinout().source()).as(row.type()).isNotBlank();
      assertThat(Kinds.standard().find(row.kind()).map(Kind::name))
          .as(row.type())
          .contains(row.kind());
    }
  }

  /**
   * Numbers of pins as published for the outline; the outlines' own source stands in their table.
   */
  @Test
  void eachRow_hasJustThePinsOfItsPackage() {
    numbered()
        .forEach(
            row ->
                assertThat(row.pinout().numbers())
                    .as(row.type() + " in " + row.pinout().casing())
                    .containsExactlyInAnyOrderElementsOf(
                        Outlines.find(row.pinout().casing()).orElseThrow().pins()));
  }

  @Test
  void eachPin_standsOnceInASection() {
    numbered()
        .forEach(
            row -> {
              Set<String> once = new HashSet<>();
              row.pinout()
                  .terminals()
                  .forEach(
                      t ->
                          assertThat(once.add(t.section() + "/" + t.number()))
                              .as(row.type() + " pin " + t.number())
                              .isTrue());
            });
  }

  @Test
  void noName_isClaimedByTwoTypes() {
    Map<String, String> owner = new HashMap<>();
    List<String> claimed = new ArrayList<>();
    for (PartTypes.Row row : TYPES.rows()) {
      for (String key : row.keys()) {
        String other = owner.putIfAbsent(key, row.type());
        if (other != null && !other.equals(row.type())) {
          claimed.add(key + ": " + other + " and " + row.type());
        }
      }
    }
    assertThat(claimed).isEmpty();
  }

  @Test
  void rowsOfOneType_areOfOneKind() {
    Map<String, String> kinds = new HashMap<>();
    for (PartTypes.Row row : TYPES.rows()) {
      assertThat(kinds.computeIfAbsent(row.type(), type -> row.kind()))
          .as(row.type())
          .isEqualTo(row.kind());
    }
  }

  /** A role that the kind's ways for current don't know would cut a path that is there. */
  @Test
  void eachRole_isOneThatTheKindsPathsKnow() {
    numbered()
        .forEach(
            row -> {
              Kind kind = Kinds.standard().find(row.kind()).orElseThrow();
              boolean any = kind.paths().stream().anyMatch(p -> p.from().equals(Terminal.ANY));
              Set<String> known = new HashSet<>(Set.of("nc", "heater tap", "screen", "shield"));
              kind.paths().forEach(path -> known.addAll(List.of(path.from(), path.to())));
              kind.pinouts()
                  .forEach(p -> p.terminals().forEach(terminal -> known.add(terminal.role())));
              row.pinout()
                  .terminals()
                  .forEach(
                      terminal ->
                          assertThat(any || known.contains(terminal.role()))
                              .as(row.type() + " role " + terminal.role())
                              .isTrue());
            });
  }

  /** Both supplies are told of every circuit of the 4000 and 74 series: common practice. */
  @Test
  void eachLogicType_tellsItsSupplyPins() {
    List<PartTypes.Row> logic =
        numbered()
            .filter(row -> row.kind().matches("logic-ic|analogue-switch"))
            .filter(row -> row.type().matches("(?:4[0-5]\\d{2}|40106|74\\d+)"))
            .toList();
    assertThat(logic).hasSizeGreaterThan(60);
    for (PartTypes.Row row : logic) {
      List<String> roles = row.pinout().terminals().stream().map(Terminal::role).toList();
      assertThat(roles).as(row.type()).containsOnlyOnce("V+");
      assertThat(roles.contains("gnd") || roles.contains("V-")).as(row.type()).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "TL072, TL072, dual-opamp",
    "tl072cp, TL072, dual-opamp",
    "2SC1815, 2SC1815, npn",
    "C1815, 2SC1815, npn",
    "2SC1815-GR, 2SC1815, npn",
    "BC547B, BC547, npn",
    "BC 547 B, BC547, npn",
    "7815, 7815, regulator",
    "LM317T, LM317, regulator-adj",
    "ECC83/12AX7, ECC83, dual-triode",
    "12AX7A, ECC83, dual-triode",
    "CD4053BE, 4053, analogue-switch",
    "HEF4053BP, 4053, analogue-switch",
    "SN74LS00N, 7400, logic-ic",
    "74LS00, 7400, logic-ic",
    "uA741CN, 741, opamp",
    "\u00b5A741CN, 741, opamp",
    "RC4558D, 4558, dual-opamp",
    "NE555 timer, 555, timer",
    "1/2 TL072, TL072, dual-opamp",
    "MC1455P1, 555, timer",
    "BZX79C5V1, BZX79, zener",
    "LM340T-15, LM340-15, regulator"
  })
  void find_takesATypeAsTheTradeWritesIt(String text, String name, String kind) {
    PartType found = TYPES.find(text).orElseThrow();
    assertThat(found.name()).isEqualTo(name);
    assertThat(found.kind()).isEqualTo(kind);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "4k7", "100n 63V", "BC547 or BC109", "XR9999 / TL072", "16V 0.5W", "T100mA"})
  void find_whatNamesNoTypeOrSeveral_isNothing(String text) {
    assertThat(TYPES.find(text)).isEmpty();
  }
}
