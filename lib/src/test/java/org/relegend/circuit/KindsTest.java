package org.relegend.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.Designator;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.Section;

class KindsTest {
  private static final Kinds KINDS = Kinds.standard();
  private static final String HEAD =
      "kind,aliases,family,letters,quantity,through,polarity,traits,rest,package,pins,paths,barrier,source\n";

  static java.util.Collection<Kind> kinds() {
    return KINDS.all();
  }

  @Test
  void everyDemoPart_hasAKindThatKnowsItsPinsAndRoles() {
    assertThat(DemoMap.map().parts()).hasSize(102);
    for (Part part : DemoMap.map().parts()) {
      Kind kind = KINDS.of(part).orElseThrow();
      assertThat(kind.unknownRoles(part.pins()))
          .as("%s %s", part.designator(), part.kind())
          .isEmpty();
      for (Terminal terminal : kind.terminalsOf(part)) {
        assertThat(kind.role(terminal.role())).as("%s %s", part.designator(), terminal).isPresent();
      }
      assertThat(kind.letters()).contains(ClassLetters.of(part.designator()).orElseThrow());
    }
  }

  @Test
  void sectionsFor_arrayOfFive_readsTheDemosWords() {
    List<Section> sections = demo("U101").sections();
    assertThat(sections)
        .containsExactly(
            new Section("Ta", roles("1", "collector", "2", "base", "3", "emitter")),
            new Section("Tb", roles("3", "emitter", "4", "base", "5", "collector")),
            new Section("Tc", roles("6", "base", "7", "emitter", "8", "collector")),
            new Section("Td", roles("9", "base", "10", "emitter", "11", "collector")),
            new Section("Te", roles("12", "base", "13", "emitter", "14", "collector")));
    assertThat(KINDS.of(demo("U101")).orElseThrow().terminalsOf(demo("U101")))
        .contains(new Terminal("13", "", "substrate"));
  }

  @Test
  void sectionsFor_otherDemoKinds() {
    assertThat(demo("U102").sections())
        .containsExactly(
            new Section("X", roles("1", "out", "2", "-in", "3", "+in")),
            new Section("Y", roles("5", "+in", "6", "-in", "7", "out")));
    assertThat(demo("T1").sections())
        .containsExactly(
            new Section("primary", roles("1", "end", "2", "end")),
            new Section("secondary", roles("3", "end", "4", "tap", "5", "end")));
    assertThat(demo("SW1").sections())
        .containsExactly(
            new Section("live", roles("1", "in", "2", "out")),
            new Section("neutral", roles("3", "in", "4", "out")));
    assertThat(demo("R101").sections()).isEmpty();
    assertThat(demo("Q101").sections()).isEmpty();
  }

  @Test
  void sectionsFor_rolesInOtherWords_readTheSame() {
    assertThat(sections("dual-opamp", "1=OUT A", "2=IN- A", "3=IN+ A", "7=output B", "6=inv B"))
        .containsExactly(
            new Section("A", roles("1", "out", "2", "-in", "3", "+in")),
            new Section("B", roles("7", "out", "6", "-in")));
    assertThat(
            sections(
                "transformer",
                "1=pri start",
                "2=pri finish",
                "3=sec 1 a",
                "4=sec 1 b",
                "5=sec 2 a"))
        .containsExactly(
            new Section("primary", roles("1", "end", "2", "end")),
            new Section("secondary 1", roles("3", "end", "4", "end")),
            new Section("secondary 2", roles("5", "end")));
  }

  /** Pin order of the dual op-amp: reference, standards section 5; the quad is common practice. */
  @Test
  void sectionsFor_withoutRoles_goByThePackageStated() {
    Kind dual = KINDS.find("dual-opamp").orElseThrow();
    assertThat(dual.sectionsFor(pins("1", "2", "3", "4", "5", "6", "7", "8"), "DIP-8"))
        .containsExactly(
            new Section("X", roles("1", "out", "2", "-in", "3", "+in")),
            new Section("Y", roles("5", "+in", "6", "-in", "7", "out")));
    assertThat(sections("dual-opamp", "1", "2", "3", "4", "5", "6", "7", "8")).isEmpty();
    Kind quad = KINDS.find("quad-opamp").orElseThrow();
    assertThat(quad.sectionsFor(pins("8", "9", "10", "11"), "DIL14"))
        .containsExactly(new Section("C", roles("8", "out", "9", "-in", "10", "+in")));
    assertThat(dual.sectionsFor(pins("1=out A", "2", "3", "7"), "8-pin DIP"))
        .containsExactly(
            new Section("A", roles("1", "out", "2", "-in", "3", "+in")),
            new Section("Y", roles("7", "out")));
  }

  /** Pins 1 to 3 are in the dual op-amp's 8-pin and 14-pin pinout, each time as something else. */
  @Test
  void sectionsFor_wherePinoutsDisagree_saysNothingUntilSomethingTells() {
    Kind opamp = KINDS.find("dual-opamp").orElseThrow();
    List<Pin> some = pins("1", "2", "3");
    assertThat(opamp.sectionsFor(some)).isEmpty();
    assertThat(opamp.sectionsFor(some, "dip-8").get(0).roles()).containsEntry("1", "out");
    assertThat(opamp.sectionsFor(some, "DIP-14").get(0).roles()).containsEntry("1", "-in");
    assertThat(sections("dual-opamp", "1=out", "2", "3")).isEmpty();
    assertThat(opamp.sectionsFor(pins("1=out", "2", "3"), "DIP-14")).isEmpty();
  }

  @Test
  void sectionsFor_numbersThePinoutHasNot_saysNothing() {
    assertThat(sections("dual-opamp", "1", "2", "15")).isEmpty();
    assertThat(KINDS.find("resistor").orElseThrow().terminalsFor(pins("1", "2", "7=odd"), ""))
        .containsExactly(
            new Terminal("1", "", ""), new Terminal("2", "", ""), new Terminal("7", "", "odd"));
  }

  @Test
  void unknownRoles_areNamed() {
    List<Pin> pins = pins("1=out X", "2=fizz X", "3=");
    assertThat(KINDS.find("dual-opamp").orElseThrow().unknownRoles(pins))
        .containsExactly(new Pin("2", "fizz X"));
  }

  @Test
  void missingRoles_namesWhatAWholeSectionHas() {
    Kind opamp = KINDS.find("dual-opamp").orElseThrow();
    assertThat(opamp.missingRoles(new Section("X", roles("1", "out"))))
        .containsExactly("-in", "+in");
    assertThat(opamp.missingRoles(demo("U102").sections().get(1))).isEmpty();
    Kind transformer = KINDS.find("transformer").orElseThrow();
    assertThat(transformer.missingRoles(new Section("primary", roles("1", "end", "2", "end"))))
        .isEmpty();
  }

  @Test
  void pathsOf_theDemosParts() {
    assertThat(paths("R101")).containsExactly("1-2 OHMIC");
    assertThat(paths("C102")).containsExactly("+--  CAPACITIVE".replace("  ", " "));
    assertThat(paths("SW1")).containsExactly("1-2 CONTACT", "3-4 CONTACT");
    assertThat(paths("F1")).containsExactly("1-2 WIRE");
    assertThat(paths("T1"))
        .containsExactly("1-2 WINDING", "3-5 WINDING", "3-4 WINDING", "5-4 WINDING");
    assertThat(paths("BR1"))
        .containsExactlyInAnyOrder(
            "AC1-PLUS JUNCTION", "AC2-PLUS JUNCTION", "MINUS-AC1 JUNCTION", "MINUS-AC2 JUNCTION");
    assertThat(paths("Q101"))
        .containsExactlyInAnyOrder("B-E JUNCTION", "B-C JUNCTION", "C-E GATED");
    assertThat(paths("U101"))
        .contains("2-1 JUNCTION", "4-3 JUNCTION", "13-1 JUNCTION", "1-3 GATED");
    assertThat(paths("U101")).doesNotContain("2-5 JUNCTION", "1-5 GATED");
    assertThat(paths("U102")).hasSize(8 * 7 / 2);
    assertThat(paths("J101")).isEmpty();
  }

  @Test
  void isolates_windingsOfATransformerAndNothingElse() {
    Part transformer = demo("T1");
    Kind kind = KINDS.of(transformer).orElseThrow();
    assertThat(kind.isolates(transformer, "1", "3")).isTrue();
    assertThat(kind.isolates(transformer, "4", "6")).isTrue();
    assertThat(kind.isolates(transformer, "3", "5")).isFalse();
    assertThat(KINDS.of(demo("R101")).orElseThrow().isolates(demo("R101"), "1", "2")).isFalse();
    Part relay = part("relay", "A1", "A2", "11", "12", "14");
    assertThat(KINDS.of(relay).orElseThrow().isolates(relay, "A1", "14")).isTrue();
    assertThat(KINDS.of(relay).orElseThrow().isolates(relay, "11", "14")).isFalse();
    Part voltages =
        part("transformer", "1=primary 0", "2=pri 115", "3=primary 230 V", "7=sec 0V", "8=sec 12V");
    Kind windings = KINDS.of(voltages).orElseThrow();
    assertThat(windings.sectionsFor(voltages.pins()))
        .containsExactly(
            new Section("primary", roles("1", "end", "2", "end", "3", "end")),
            new Section("secondary", roles("7", "end", "8", "end")));
    assertThat(windings.isolates(voltages, "2", "3")).isFalse();
    assertThat(windings.isolates(voltages, "3", "7")).isTrue();
    Part halves = part("transformer", "1=primary 1", "2=primary 1", "3=primary 2", "4=primary 2");
    assertThat(windings.isolates(halves, "1", "3")).isFalse();
    Part unknown = part("transformer", "1=primary", "9=green wire");
    assertThat(windings.isolates(unknown, "1", "9")).isFalse();
    assertThat(windings.pathsOf(unknown))
        .map(PinPath::conduction)
        .containsExactly(Conduction.UNKNOWN);
  }

  @ParameterizedTest
  @CsvSource({
    "R101,R",
    "RV101,RV",
    "BR1,BR",
    "1A2R3,R",
    "A1-C12,C",
    "R17A,R",
    "q3,Q",
    "XU3,XU",
    "XTAL1,XTAL"
  })
  void classLetters_ofADesignator(String designator, String letters) {
    assertThat(ClassLetters.of(new Designator(designator))).contains(letters);
    assertThat(ClassLetters.meanings(letters)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"101", "R", "input", "R-"})
  void classLetters_ofOtherNames_areNone(String designator) {
    assertThat(ClassLetters.of(new Designator(designator))).isEmpty();
  }

  /** Reference, standards section 3: RV and VR are ambiguous by source, CR and D are one class. */
  @Test
  void ambiguousLetters_keepAllMeanings() {
    assertThat(ClassLetters.meanings("RV"))
        .map(ClassLetters.Meaning::meaning)
        .containsExactly("varistor", "variable resistor");
    assertThat(ClassLetters.meanings("VR"))
        .map(ClassLetters.Meaning::meaning)
        .containsExactly("zener diode or regulator", "variable resistor");
    assertThat(names("VR1")).contains("pot", "zener", "regulator", "varistor");
    assertThat(names("CR1")).isEqualTo(names("D1")).contains("diode", "zener", "led", "bridge");
    assertThat(ClassLetters.meanings("QQ")).isEmpty();
  }

  /** The rows of HP-type class letter tables and the old list in the reference, section 3. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "A", "B", "C", "CP", "CR", "DL", "DS", "E", "F", "FL", "J", "K", "L", "M", "MP", "P", "Q",
        "R", "RT", "S", "TB", "TP", "V", "W", "X", "T", "U", "H", "BT", "CB", "VR", "Y", "RV", "AT",
        "D", "BR", "RN", "PS", "LS", "MK", "TC", "FB", "FD"
      })
  void publishedLetters_areKnown(String letters) {
    assertThat(ClassLetters.meanings(letters)).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void eachKind_isWholeInItself(Kind kind) {
    assertThat(kind.letters()).isNotEmpty();
    kind.letters()
        .forEach(letters -> assertThat(ClassLetters.meanings(letters)).as(letters).isNotEmpty());
    for (Pinout pinout : kind.pinouts()) {
      Set<Terminal> once = new HashSet<>(pinout.terminals());
      assertThat(once).hasSameSizeAs(pinout.terminals());
    }
    if (!kind.has(Kind.Trait.OPEN)) {
      assertThat(kind.pinouts()).isNotEmpty();
    }
    Set<String> positions = new HashSet<>();
    kind.paths().forEach(path -> positions.add(path.position()));
    assertThat(kind.restPosition().isEmpty() || !positions.isEmpty()).isTrue();
    for (RolePath path : kind.paths()) {
      assertThat(path.conduction() == Conduction.CONTACT).isEqualTo(!path.position().isEmpty());
    }
  }

  @Test
  void find_takesAliasesAndSpelling() {
    assertThat(KINDS.find("Dual Opamp")).isEqualTo(KINDS.find("dual-opamp")).isPresent();
    assertThat(KINDS.find("electrolytic").map(Kind::name)).contains("cap-pol");
    assertThat(KINDS.find("")).isEmpty();
    assertThat(KINDS.find("flux capacitor")).isEmpty();
  }

  @Test
  void with_aFilesKinds_addsAndReplaces() throws KindsException {
    String table =
        HEAD
            + "vco,oscillator,ic,U,none,,,,,DIP-16,\"1=in 2=out\",in~out internal,,data sheet\n"
            + "npn,,transistor,Q,none,,,,,,1=collector 2=base 3=emitter,,,\n";
    Kinds more = KINDS.with(new StringReader(table), "own.csv");
    assertThat(more.find("oscillator").orElseThrow().pinouts().get(0).numbers())
        .containsExactly("1", "2");
    assertThat(more.find("npn").orElseThrow().pinouts().get(0).at("1"))
        .containsExactly(new Terminal("1", "", "collector"));
    assertThat(more.find("pnp")).isEqualTo(KINDS.find("pnp"));
    assertThat(KINDS.find("vco")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Vco,,ic,U,none,,,,,,1=in,,,|column \"kind\"",
        "vco,,,U,none,,,,,,1=in,,,|column \"family\"",
        "vco,,ic,U,amps,,,,,,1=in,,,|one of ohm, farad",
        "vco,,ic,U,none,tunnel,,,,,1=in,,,|one of connector, link, zero-ohm",
        "vco,,ic,U,none,,,hot,,,1=in,,,|inlet, mains, open, varied and high-voltage",
        "vco,,ic,U,none,,,,,,1in,,,|number=role",
        "vco,,ic,U,none,,,,,,a[1=in,,,|number=role",
        "vco,,ic,U,none,,,,,,1=in 2=out,in-out internal,,|role~role",
        "vco,,ic,U,none,,,,,,1=in 2=out,in~out magic,,|magic",
        "vco,,ic,U,none,,,,,,1=in 2=out,in~exit internal,,|exit",
        "vco,,ic,U,none,,in,,,,1=in 2=out,,,|positive>negative",
        "vco,,ic,U,none,,,,,,1=in 2=out,,in&gone,|gone",
        "vco,npn,ic,U,none,,,,,,1=in,,,|npn",
        "vco,,ic,U,none,,,,,,1=in,,,,,,|17 cells"
      })
  void with_aFaultyRow_saysWhereAndWhatWasExpected(String row, String message) {
    String table = HEAD + row.replace('&', '|') + "\n";
    assertThatThrownBy(() -> KINDS.with(new StringReader(table), "own.csv"))
        .isInstanceOf(KindsException.class)
        .hasMessageContaining(message);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"a\"\"b[1=in]\"", "1=\u202ein", "a\u200b[1=in]"})
  void with_namesThatMislead_isRefused(String pins) {
    String table = HEAD + "vco,,ic,U,none,,,,,," + pins + ",,,\n";
    assertThatThrownBy(() -> KINDS.with(new StringReader(table), "own.csv"))
        .isInstanceOf(KindsException.class)
        .hasMessageContaining("line 2, column \"pins\"")
        .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\u202e", "\u200b"));
  }

  @Test
  void with_aSpreadsheetsByteOrderMark_isRead() throws KindsException {
    String table = "\uFEFF" + HEAD + "vco,,ic,U,none,,,,,,1=in,,,\n";
    assertThat(KINDS.with(new StringReader(table), "own.csv").find("vco")).isPresent();
  }

  @Test
  void sectionsFor_aRoleWithQuotationMarks_isNoSection() {
    assertThat(sections("dual-opamp", "9=out \"X\"")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a,b,c\n", "\"kind", "kind,kind\nx,y\n", "\u0000\u0001\u0002"})
  void with_noTable_isRefused(String text) {
    assertThatThrownBy(() -> KINDS.with(new StringReader(text), "own.csv"))
        .isInstanceOf(KindsException.class)
        .hasMessageContaining("own.csv");
  }

  @Test
  void with_aMissingFile_isRefused(@org.junit.jupiter.api.io.TempDir java.nio.file.Path folder) {
    java.nio.file.Path missing = folder.resolve("none.csv");
    assertThatThrownBy(() -> KINDS.with(missing))
        .isInstanceOf(KindsException.class)
        .hasMessageContaining("none.csv");
  }

  private static Part demo(String designator) {
    return DemoMap.map().part(new PartId(designator)).orElseThrow();
  }

  private static List<String> names(String designator) {
    return KINDS.possible(new Designator(designator)).stream().map(Kind::name).toList();
  }

  private static List<String> paths(String designator) {
    Part part = demo(designator);
    return KINDS.of(part).orElseThrow().pathsOf(part).stream()
        .map(path -> path.from() + "-" + path.to() + " " + path.conduction())
        .toList();
  }

  private static List<Section> sections(String kind, String... pins) {
    return KINDS.find(kind).orElseThrow().sectionsFor(pins(pins));
  }

  private static Part part(String kind, String... pins) {
    return BoardMapSamples.part("P1", kind, "").withPins(pins(pins), List.of());
  }

  /** "1=role", or just the number. */
  private static List<Pin> pins(String... texts) {
    List<Pin> pins = new ArrayList<>();
    for (String text : texts) {
      int cut = text.indexOf('=');
      pins.add(
          cut < 0 ? new Pin(text, "") : new Pin(text.substring(0, cut), text.substring(cut + 1)));
    }
    return pins;
  }

  private static Map<String, String> roles(String... pairs) {
    Map<String, String> roles = new java.util.LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      roles.put(pairs[i], pairs[i + 1]);
    }
    return roles;
  }
}
