package org.relegend.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.table.TableSamples.none;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.circuit.Kinds;
import org.relegend.circuit.Terminal;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapInfo;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.Section;

/**
 * What a stated type writes into a map, asked pin by pin, and where nothing may be written. The
 * expectations were written without the table, from what books other than the makers' teach: each
 * names the one; all are from memory.
 */
class TypeCompletionTest {
  private static final BoardMap EMPTY = BoardMap.empty("m", MapInfo.titled("Empty"));

  private static Part part(String designator, String kind, String value, String casing)
      throws TableException, EditRefusedException {
    TableSamples tables =
        none().parts("designator,kind,value,package", row(designator, kind, value, casing));
    BoardMap map = tables.into(EMPTY);
    assertThat(tables.plan(map).edit().steps()).as("second import").isEmpty();
    return map.part(new PartId(designator)).orElseThrow();
  }

  private static TableSamples tables(String kind, String value, String casing, int count) {
    String[] pins = new String[count + 1];
    pins[0] = "net,part,pin";
    for (int i = 1; i <= count; i++) {
      pins[i] = "N%d,X1,%d".formatted(i, i);
    }
    return none().parts("designator,kind,value,package", row("X1", kind, value, casing)).pins(pins);
  }

  private static Part numbered(String kind, String value, String casing, int count)
      throws TableException, EditRefusedException {
    return tables(kind, value, casing, count).into(EMPTY).part(new PartId("X1")).orElseThrow();
  }

  private static String row(String... cells) {
    return String.join(",", cells);
  }

  private static String doubt(Part part) {
    return new PartCompletion(Kinds.standard()).doubt(part).orElse("");
  }

  private static void assertRoles(Part part, String expected) {
    for (String pair : expected.split(" ")) {
      String[] cut = pair.split("=", 2);
      assertThat(Kinds.standard().of(part).orElseThrow().terminalsOf(part))
          .as(part.value() + " pin " + pair)
          .filteredOn(terminal -> terminal.number().equals(cut[0]))
          .map(Terminal::role)
          .contains(cut[1].replace('_', ' '));
    }
  }

  /**
   * Circuits. Sources, all from memory: AoE = Horowitz and Hill, The Art of Electronics, 2nd
   * edition, its drawings with pin numbers; Jung = Jung, IC Op-Amp Cookbook and IC Timer Cookbook;
   * CMOS and TTL = Lancaster, CMOS Cookbook and TTL Cookbook, the pages of each type; Trade = what
   * every service sheet of the time has (common practice).
   */
  @ParameterizedTest
  @CsvSource({
    "TL072, , 1=out 2=-in 3=+in 4=V- 5=+in 6=-in 7=out 8=V+, AoE",
    "NE5532N, , 1=out 8=V+ 4=V-, AoE",
    "LM1458N, , 7=out 6=-in 5=+in, Jung",
    "RC4558D, , 1=out 7=out 4=V-, Trade",
    "LM358N, , 1=out 2=-in 3=+in 8=V+, AoE",
    "uA741CN, , 2=-in 3=+in 4=V- 6=out 7=V+ 1=offset 5=offset, Jung",
    "741, DIP-8, 2=-in 3=+in 6=out, Jung",
    "741, DIP-14, 4=-in 5=+in 6=V- 10=out 11=V+, Jung",
    "741, TO-99, 2=-in 3=+in 4=V- 6=out 7=V+, Jung",
    "LF356N, , 2=-in 6=out 7=V+, AoE",
    "OP07CP, , 1=offset 8=offset 6=out, AoE",
    "TL074CN, , 4=V+ 11=V- 1=out 7=out 8=out 14=out, AoE",
    "LM324N, , 4=V+ 11=V- 10=+in 12=+in, AoE",
    "RC4136N, , 7=V- 11=V+ 3=out 4=out 10=out 12=out, Jung",
    "LM3900N, , 7=V- 14=V+ 4=out 5=out 9=out 10=out, Jung",
    "747, DIP-14, 1=-in 2=+in 12=out 10=out 4=V-, Jung",
    "LM311N, , 2=+in 3=-in 7=out 1=gnd 4=V- 8=V+, AoE",
    "LM393N, , 1=out 2=-in 3=+in 4=V- 8=V+, AoE",
    "LM339N, , 2=out 1=out 14=out 13=out 3=V+ 12=V-, AoE",
    "LM319N, , 12=out 7=out 11=V+ 6=V-, AoE",
    "CA3080E, , 2=-in 3=+in 5=bias 6=out 7=V+ 4=V-, Jung",
    "LM13700N, , 1=bias 16=bias 5=out 12=out 11=V+ 6=V-, Trade",
    "NE555N, , 1=gnd 2=trigger 3=out 4=reset 6=threshold 7=discharge 8=V+, Jung",
    "NE556N, , 7=gnd 14=V+ 5=out 9=out 1=discharge 13=discharge 6=trigger 8=trigger, Jung",
    "LM723CN, , 4=-in 5=+in 6=reference 7=V- 10=out 12=V+, AoE",
    "LM723CH, , 2=-in 3=+in 4=reference 5=V- 6=out 8=V+, Jung",
    "7815, TO-220, 1=in 2=gnd 3=out, AoE",
    "7815, TO-3, 1=in 2=out 3=gnd, AoE",
    "LM7915CT, , 1=gnd 2=in 3=out, AoE",
    "7912, TO-3, 1=gnd 2=out 3=in, AoE",
    "78L05, TO-92, 1=out 2=gnd 3=in, AoE",
    "79L12, TO-92, 1=gnd 2=in 3=out, AoE",
    "LM309K, TO-3, 1=in 2=out 3=gnd, AoE",
    "LM317T, , 1=adjust 2=out 3=in, AoE",
    "LM317K, TO-3, 1=adjust 2=in 3=out, AoE",
    "LM337T, , 1=adjust 2=in 3=out, AoE",
    "LM337K, , 1=adjust 2=out 3=in, AoE",
    "CD4001BE, , 1=in 2=in 3=out 4=out 10=out 11=out 7=V- 14=V+, CMOS",
    "4011, , 3=out 4=out 10=out 11=out, CMOS",
    "HEF4013BP, , 1=Q 2=not_Q 3=clock 5=data 13=Q 7=V- 14=V+, CMOS",
    "CD4017BE, , 3=out_0 2=out_1 14=clock 15=reset 8=V- 16=V+, CMOS",
    "4049, , 1=V+ 8=V- 2=out 3=in, CMOS",
    "CD4053BE, , 14=common 15=common 4=common 7=V- 8=gnd 16=V+, CMOS",
    "MC14051BCP, , 3=common 13=channel_0 6=inhibit 16=V+, CMOS",
    "4066, , 13=control 5=control 6=control 12=control 7=V- 14=V+, CMOS",
    "CD40106BE, , 1=in 2=out 12=out 13=in, CMOS",
    "4060, , 11=oscillator_in 12=reset 7=Q4 16=V+, CMOS",
    "SN74LS00N, , 1=in 2=in 3=out 7=gnd 14=V+, TTL",
    "7402, , 1=out 2=in 3=in 7=gnd 14=V+, TTL",
    "74LS04, , 1=in 2=out 9=in 8=out, TTL",
    "7474, , 2=data 3=clock 5=Q 6=not_Q 7=gnd 14=V+, TTL",
    "7490, , 5=V+ 10=gnd 12=QA 14=clock_A, TTL",
    "7493, , 5=V+ 10=gnd 12=QA 11=QD, TTL",
    "7476, , 5=V+ 13=gnd 15=Q 11=Q, TTL",
    "7447, , 7=A 13=segment_a 8=gnd 16=V+, TTL",
    "74121, , 6=Q 1=not_Q 14=V+ 7=gnd, TTL",
    "74LS138, , 15=out_0 7=out_7 6=enable_1, TTL",
    "CA3046, , 13=substrate 3=emitter 1=collector 5=collector, Jung",
    "NE571N, , 4=gnd 13=V+ 7=out 10=out, Trade",
    "MN3007, , 1=gnd 5=V- 3=in 7=out_1 8=out_2, Trade",
    "LM386N, , 2=-in 3=+in 4=gnd 5=out 6=V+, AoE",
    "ULN2003A, , 8=gnd 9=clamp 1=in_1 16=out_1, AoE"
  })
  void circuit_ofAStatedType_hasItsPins(String value, String casing, String pins, String source)
      throws TableException, EditRefusedException {
    assertThat(source).isIn("AoE", "Jung", "CMOS", "TTL", "Trade");
    Part part = part("U1", "", value, casing == null ? "" : casing);
    assertThat(part.kind()).isNotEmpty();
    assertThat(part.casing()).isNotEmpty();
    assertRoles(part, pins);
  }

  /**
   * Valves by the base drawings of the RCA Receiving Tube Manual and the valve data of the Radio
   * Designer's Handbook (Langford-Smith), both from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "ECC83/12AX7, 1=anode 2=grid 3=cathode 6=anode 7=grid 8=cathode 9=heater_tap",
    "12AU7, 4=heater 5=heater 9=heater_tap",
    "ECC88, 1=anode 4=heater 5=heater 9=screen",
    "6SN7GT, 1=grid 2=anode 3=cathode 4=grid 5=anode 6=cathode 7=heater 8=heater",
    "EL34, 3=anode 4=screen_grid 5=grid 8=cathode 2=heater 7=heater",
    "6V6GT, 3=anode 4=screen_grid 5=grid 8=cathode",
    "EL84, 2=grid 3=cathode 7=anode 9=screen_grid",
    "EF86, 1=screen_grid 3=cathode 6=anode 9=grid",
    "6X4, 1=anode 6=anode 7=cathode",
    "EZ81, 1=anode 7=anode 3=cathode",
    "GZ34, 4=anode 6=anode 2=filament 8=filament",
    "0A2, 1=anode 5=anode 2=cathode 7=cathode"
  })
  void valve_ofAStatedType_hasItsBase(String value, String pins)
      throws TableException, EditRefusedException {
    assertRoles(part("V1", "", value, ""), pins);
  }

  /** Orders of leads as the Towers' International Transistor Selector has them, from memory. */
  @ParameterizedTest
  @CsvSource({
    "npn, 2N3904, TO-92, 1=emitter 2=base 3=collector",
    "pnp, 2N3906, TO-92, 1=emitter 2=base 3=collector",
    "npn, C1815, TO-92, 1=emitter 2=collector 3=base",
    "npn, 2N2222A, TO-18, 1=emitter 2=base 3=collector",
    "npn, BD139, TO-126, 1=emitter 2=collector 3=base",
    "npn, TIP31C, TO-220, 1=base 2=collector 3=emitter",
    "npn, 2N3055, TO-3, 1=base 2=emitter 3=collector",
    "npn, TIP35C, TO-218, 1=base 2=collector 3=emitter",
    "njfet, 2N5457, TO-92, 1=drain 2=source 3=gate",
    "nmos, IRF540, TO-220, 1=gate 2=drain 3=source",
    "scr, TIC106D, TO-220, 1=cathode 2=anode 3=gate",
    "triac, BT139-600, TO-220, 1=terminal_1 2=terminal_2 3=gate"
  })
  void threeLeads_ofAStatedType_areInItsOrder(String kind, String value, String casing, String pins)
      throws TableException, EditRefusedException {
    assertRoles(numbered(kind, value, casing, 3), pins);
  }

  @Test
  void transistor_ofWhosePinsNobodySpoke_hasThemByLetters()
      throws TableException, EditRefusedException {
    Part part = part("Q1", "", "BC547B", "");
    assertThat(part.kind()).isEqualTo("npn");
    assertThat(part.casing()).isEqualTo("TO-92");
    assertThat(part.pins()).extracting(Pin::number).containsExactly("E", "B", "C");
    assertThat(doubt(part)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "opamp, 741, '', 8, is 741 in DIP-8 or TO-99 or DIP-14? They number differently",
    "npn, BC547, TO-92, 3, numbered differently by its makers",
    "njfet, 2N3819, TO-92, 3, numbered differently by its makers",
    "regulator, 7815, '', 3, is 7815 in TO-220 or TO-3? They number differently",
    "regulator, LM309K, TO-220, 3, 'known in TO-3, not in TO-220'",
    "regulator-adj, LM317T, TO-3, 3, 'known in TO-220, not in TO-3'",
    "regulator-adj, LM337T, TO-3, 3, 'known in TO-220, not in TO-3'",
    "regulator, '', TO-92, 3, 'known in TO-220, not in TO-92'",
    "regulator, 7815 or 7812, TO-220, 3, no pinout of the type",
    "timer, XR2240CP, DIP-8, 8, no pinout of the type",
    "timer, NE556, DIP-8, 8, 'known in DIP-14, not in DIP-8'",
    "opamp, 741, SO-8, 8, not in SO-8",
    "npn, BC557, TO-92, 3, 'stated as npn, but BC557 is pnp'",
    "dual-triode, '', B9A, 9, which type of dual-triode",
    "opamp, '', DIP-8, 8, which type of opamp",
    "dual-opamp, '', '', 8, is it in DIP-8 or DIP-14"
  })
  void inDoubt_nothingIsWritten_andWhatIsMissingIsSaid(
      String kind, String value, String casing, int pins, String missing)
      throws TableException, EditRefusedException {
    Part part = numbered(kind, value, casing, pins);
    assertThat(part.pins()).hasSize(pins).allMatch(pin -> pin.role().isEmpty());
    assertThat(part.sections()).isEmpty();
    assertThat(doubt(part)).contains(missing);
    assertThat(tables(kind, value, casing, pins).plan(EMPTY).warnings())
        .anyMatch(warning -> warning.contains(missing));
  }

  /** Numbers don't tell a winding from a contact, nor which side the mains is on. */
  @ParameterizedTest
  @CsvSource({
    "transformer, 4",
    "transformer-signal, 5",
    "relay, 5",
    "relay-dpdt, 8",
    "optocoupler, 4",
    "optocoupler, 6",
    "opto-ldr, 4",
    "filter, 3",
    "power-supply, 2"
  })
  void barrier_fromNumbersAlone_isNeverWritten(String kind, int pins)
      throws TableException, EditRefusedException {
    Part part = numbered(kind, "", "", pins);
    assertThat(part.pins()).hasSize(pins).allMatch(pin -> pin.role().isEmpty());
    assertThat(part.sections()).isEmpty();
    assertThat(Kinds.standard().of(part).orElseThrow().isolates(part, "1", "3")).isFalse();
  }

  /** The published pinout of a type: Omron MK2P base drawing, Motorola 4N25 sheet; from memory. */
  @Test
  void barrier_ofAStatedType_isWritten() throws TableException, EditRefusedException {
    Part opto = part("U1", "", "4N25", "");
    assertThat(opto.sections()).extracting(Section::name).containsExactly("led", "output");
    assertThat(Kinds.standard().of(opto).orElseThrow().isolates(opto, "1", "5")).isTrue();
    Part relay = part("K1", "", "MK2P", "");
    assertThat(Kinds.standard().of(relay).orElseThrow().isolates(relay, "2", "3")).isTrue();
    assertThat(Kinds.standard().of(relay).orElseThrow().isolates(relay, "1", "3")).isFalse();
  }

  @Test
  void type_whereTheKindStands_isTakenForBoth() throws TableException, EditRefusedException {
    Part part = part("U1", "TL072", "", "");
    assertThat(part.kind()).isEqualTo("dual-opamp");
    assertThat(part.value()).isEqualTo("TL072");
    assertThat(part.pins()).hasSize(8);
  }

  @Test
  void number_atAnotherClassOfPart_isNoType() throws TableException, EditRefusedException {
    assertThat(part("R7", "", "555", "").kind()).isEmpty();
    assertThat(part("C3", "", "4001", "").kind()).isEmpty();
    assertThat(part("R8", "resistor", "741", "").kind()).isEqualTo("resistor");
  }

  @Test
  void widerKind_keepsItsWordAndHasTheTypesPins() throws TableException, EditRefusedException {
    Part part = part("U1", "ic", "CD4053BE", "");
    assertThat(part.kind()).isEqualTo("ic");
    assertThat(part.pins()).hasSize(16);
    assertThat(part("U2", "timer", "NE556N", "").pins()).hasSize(14);
  }
}
