package org.relegend.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.table.TableSamples.none;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.relegend.map.BoardMap;
import org.relegend.map.EditRefusedException;
import org.relegend.map.MapInfo;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.Section;

class PartCompletionTest {
  private static final BoardMap EMPTY = BoardMap.empty("m", MapInfo.titled("Empty"));

  private static Part part(BoardMap map, String id) {
    return map.part(new PartId(id)).orElseThrow();
  }

  private static BoardMap taken(String kind, String casing, String... pins)
      throws TableException, EditRefusedException {
    String[] lines = new String[pins.length + 1];
    lines[0] = "net,part,pin,role,section";
    for (int i = 0; i < pins.length; i++) {
      lines[i + 1] = "N%d,X1,%s".formatted(i, pins[i]);
    }
    TableSamples tables =
        none().parts("designator,kind,package", "X1,%s,%s".formatted(kind, casing)).pins(lines);
    BoardMap map = tables.into(EMPTY);
    assertThat(tables.plan(map).edit().steps()).as("second import").isEmpty();
    return map;
  }

  /** Pin numbers of a dual operational amplifier in DIP-8: published table, standards section 5. */
  @Test
  void dualOpamp_ofWhichThreePinsAreListed_isWhole() throws TableException, EditRefusedException {
    Part part = part(taken("dual-opamp", "DIP-8", "7,,", "5,,", "8,,"), "X1");
    assertThat(part.pins())
        .containsExactly(
            new Pin("1", "out"),
            new Pin("2", "-in"),
            new Pin("3", "+in"),
            new Pin("4", "V-"),
            new Pin("5", "+in"),
            new Pin("6", "-in"),
            new Pin("7", "out"),
            new Pin("8", "V+"));
    assertThat(part.sections())
        .containsExactlyInAnyOrder(
            new Section("X", Map.of("1", "out", "2", "-in", "3", "+in")),
            new Section("Y", Map.of("7", "out", "6", "-in", "5", "+in")));
  }

  @Test
  void dualOpamp_whosePackageNobodyTold_mayBeOneOfTwo()
      throws TableException, EditRefusedException {
    assertThat(part(taken("dual-opamp", "", "1,,", "2,,"), "X1").pins())
        .containsExactly(new Pin("1", ""), new Pin("2", ""));
  }

  @Test
  void dualOpamp_whoseRolesTellTheSections_needsNoPackage()
      throws TableException, EditRefusedException {
    Part part = part(taken("dual-opamp", "", "1,out X,", "2,-in X,", "7,out Y,"), "X1");
    assertThat(part.sections())
        .containsExactly(
            new Section("X", Map.of("1", "out", "2", "-in")), new Section("Y", Map.of("7", "out")));
    assertThat(part(taken("dual-opamp", "", "1,out,", "2,-in,"), "X1").sections()).isEmpty();
  }

  @Test
  void roleInTheTable_goesBeforeTheUsualOne() throws TableException, EditRefusedException {
    Part part = part(taken("npn", "", "B,control,"), "X1");
    assertThat(part.pins())
        .containsExactly(
            new Pin("E", "emitter"), new Pin("B", "control"), new Pin("C", "collector"));
  }

  @Test
  void sectionsInTheTable_keepTheirNames() throws TableException, EditRefusedException {
    Part part = part(taken("dual-opamp", "DIP-8", "1,out,left", "7,out,right"), "X1");
    assertThat(part.sections()).extracting(Section::name).containsExactly("left", "right");
    assertThat(part.pins()).hasSize(8);
  }

  @Test
  void pinsOutsideTheKind_addNothing() throws TableException, EditRefusedException {
    assertThat(part(taken("resistor", "", "1,,", "3,,"), "X1").pins()).hasSize(2);
    assertThat(part(taken("ic", "DIP-14", "1,,"), "X1").pins()).hasSize(1);
    assertThat(part(taken("gizmo", "", "1,,"), "X1").pins()).hasSize(1);
  }

  @Test
  void partWithoutPins_staysOpen() throws TableException, EditRefusedException {
    BoardMap map = none().parts("designator,kind", "Q1,npn").into(EMPTY);
    assertThat(part(map, "Q1").pins()).isEmpty();
    BoardMap more = none().pins("net,part,pin", "VP,Q1,C").into(map);
    assertThat(part(more, "Q1").pins()).extracting(Pin::number).containsExactly("E", "B", "C");
  }

  @Test
  void partThatNoTableSpeaksOf_isLeftAlone() throws TableException, EditRefusedException {
    BoardMap map = none().parts("designator,kind", "R1,resistor").into(EMPTY);
    assertThat(none().parts("designator,kind", "R2,resistor").plan(map).edit().steps()).hasSize(1);
  }

  @Test
  void demoArray_hasItsFiveTransistors() throws TableException, EditRefusedException {
    Part array = part(TableSamples.demo().into(EMPTY), "U101");
    assertThat(array.sections())
        .extracting(Section::name)
        .containsExactly("Ta", "Tb", "Tc", "Td", "Te");
    assertThat(array.sectionsOf("3")).extracting(Section::name).containsExactly("Ta", "Tb");
    assertThat(array.pins().get(2).role()).isEqualTo("Ta+Tb emitters");
  }

  @Test
  void twoWordsForOneKind_areNoContradiction() throws TableException, EditRefusedException {
    BoardMap map = none().parts("designator,kind", "C1,cap-pol").into(EMPTY);
    assertThat(none().parts("designator,kind", "C1,Elco").plan(map).edit().steps()).isEmpty();
    List<String> kinds = map.parts().stream().map(Part::kind).toList();
    assertThat(kinds).containsExactly("cap-pol");
  }
}
