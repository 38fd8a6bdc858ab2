package org.relegend.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.relegend.map.BoardMapSamples.blank;
import static org.relegend.map.BoardMapSamples.divider;
import static org.relegend.table.TableSamples.by;
import static org.relegend.table.TableSamples.none;
import static org.relegend.table.TableSamples.replacing;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.Board;
import org.relegend.map.BoardId;
import org.relegend.map.BoardMap;
import org.relegend.map.BoardMapSamples;
import org.relegend.map.EditRefusedException;
import org.relegend.map.Evidence;
import org.relegend.map.MapIndex;
import org.relegend.map.MapInfo;
import org.relegend.map.Net;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Pin;
import org.relegend.map.PinRef;

class TableImportTest {
  private static final BoardMap EMPTY = BoardMap.empty("m", MapInfo.titled("Empty"));

  private static Part part(BoardMap map, String id) {
    return map.part(new PartId(id)).orElseThrow();
  }

  private static List<String> pins(BoardMap map, String net) {
    return map.net(new NetId(net)).orElseThrow().pins().stream().map(PinRef::toString).toList();
  }

  /** The counts stand in the demo's design: 102 parts, 259 pins, 67 nets. */
  @Test
  void demo_isTakenWhole() throws TableException, EditRefusedException {
    ImportPlan plan = TableSamples.demo().plan(EMPTY);
    BoardMap map = plan.edit().applyTo(EMPTY);
    assertThat(plan.warnings()).isEmpty();
    assertThat(plan.summary().toString())
        .isEqualTo("102 parts added, 67 nets added, 259 pins joined");
    assertThat(map.parts()).hasSize(102);
    assertThat(map.nets()).hasSize(67);
    assertThat(map.nets().stream().mapToInt(net -> net.members().size()).sum()).isEqualTo(259);
    assertThat(map.parts().stream().mapToInt(part -> part.pins().size()).sum()).isEqualTo(259);
    assertThat(map.channels()).extracting("name").containsExactly("A", "B");
    assertThat(map.boards()).extracting(Board::id).containsExactly(new BoardId("main"));
    assertThat(pins(map, "A_ATT")).containsExactly("C102.-", "R106.1");
    assertThat(part(map, "U102").value()).isEqualTo("dual JFET-input op-amp, 8-pin");
    assertThat(part(map, "U102").pins().get(6)).isEqualTo(new Pin("7", "out Y"));
    assertThat(part(map, "C102").channel()).isEqualTo("A");
  }

  @Test
  void secondImport_evenOnAnotherDay_changesNothing() throws TableException, EditRefusedException {
    BoardMap once = TableSamples.demo().into(EMPTY);
    ImportPlan again = TableSamples.demo().plan(once, by("ann", TableSamples.TUESDAY));
    assertThat(again.edit().steps()).isEmpty();
    assertThat(again.summary().toString()).isEqualTo("nothing new");
    assertThat(again.edit().applyTo(once)).isEqualTo(once);
  }

  @Test
  void importByAnother_addsTheirWordToTheSameFacts() throws TableException, EditRefusedException {
    TableSamples tables = none().pins("net,part,pin,evidence", "VP,R1,1,measured");
    BoardMap map = tables.into(tables.into(EMPTY), by("bob", TableSamples.TUESDAY));
    Net.Member member = map.net(new NetId("VP")).orElseThrow().members().get(0);
    assertThat(member.evidence()).extracting("author").containsExactly("ann", "bob");
    assertThat(member.evidence()).extracting("evidence").containsOnly(Evidence.MEASURED);
  }

  @Test
  void importThatExtends_addsOnlyWhatIsNew() throws TableException, EditRefusedException {
    BoardMap first =
        none().parts("designator,kind", "R1,resistor").pins("net,part,pin", "VP,R1,1").into(EMPTY);
    ImportPlan plan =
        none()
            .parts("designator,kind,value", "R1,,4k7", "R2,resistor,10k")
            .pins("net,part,pin", "VP,R1,1", "VP,R2,1", "MID,R2,2")
            .plan(first);
    assertThat(plan.summary().toString())
        .isEqualTo("1 part added, 1 part changed, 1 net added, 1 net changed, 2 pins joined");
    BoardMap map = plan.edit().applyTo(first);
    assertThat(part(map, "R1").kind()).isEqualTo("resistor");
    assertThat(part(map, "R1").value()).isEqualTo("4k7");
    assertThat(pins(map, "VP")).containsExactly("R1.1", "R2.1");
  }

  /** One table in the ways that spreadsheets of several countries write it. */
  @ParameterizedTest
  @CsvSource({
    "',',windows-1252,false",
    "';',windows-1252,false",
    "';',UTF-8,true",
    "'\t',UTF-16LE,true"
  })
  void anySpreadsheetsExport_givesTheSameMap(String separator, String charset, boolean mark)
      throws TableException, EditRefusedException {
    TableSamples plain =
        none()
            .parts("designator,value,note", "C1,\"10 µF, 25 V\",\"bead\nno mark\"", "R1,4k7,")
            .placements("target,picture,x,y", "C1,component,812.5,40");
    String parts =
        "designator|value|note|\r\n\"C1\"|\"10 µF, 25 V\"|\"bead\nno mark\"|\r\n|||\r\nR1|4k7||\r\n|||";
    String placements = "target|picture|x|y\r\nC1|component|812,5|40\r\n|||\r\n";
    if (separator.equals(",")) {
      placements = placements.replace("812,5", "812.5");
    }
    Map<TableSort, TableSource> exported =
        Map.of(
            TableSort.PARTS, exported("parts.csv", parts, separator, charset, mark),
            TableSort.PLACEMENTS, exported("p.csv", placements, separator, charset, mark));
    BoardMap map =
        TableImport.plan(blank(), exported, by("ann", TableSamples.MONDAY)).edit().applyTo(blank());
    assertThat(map).isEqualTo(plain.into(blank()));
  }

  private static TableSource exported(
      String name, String text, String separator, String charset, boolean mark) {
    String marked = (mark ? "\ufeff" : "") + text.replace("|", separator);
    return new TableSource(name, marked.getBytes(Charset.forName(charset)));
  }

  @Test
  void value_otherThanInTheMap_isAProblemUnlessTheTableReplacesIt()
      throws TableException, EditRefusedException {
    TableSamples tables = none().parts("designator,value", "R1,5k6");
    assertThatThrownBy(() -> tables.plan(divider()))
        .hasMessage(
            "parts.csv, line 2, column value: R1 is \"4k7\" in the map and \"5k6\" here: correct"
                + " one, or let the table replace it");
    assertThat(part(tables.into(divider(), replacing()), "R1").value()).isEqualTo("5k6");
  }

  @Test
  void pin_onAnotherNetInTheMap_isAProblemUnlessTheTableMovesIt()
      throws TableException, EditRefusedException {
    TableSamples tables = none().pins("net,part,pin", "VP,R2,1");
    assertThatThrownBy(() -> tables.plan(divider()))
        .hasMessageContaining(
            "line 2, column net: pin R2.1 is on net MID in the map and on net VP");
    BoardMap map = tables.into(divider(), replacing());
    assertThat(pins(map, "VP")).containsExactly("R1.1", "R2.1");
    assertThat(pins(map, "MID")).containsExactly("R1.2");
    assertThat(tables.plan(map, replacing()).edit().steps()).isEmpty();
  }

  @Test
  void pin_onTwoNetsInTheTable_isAProblemEvenWhereItReplaces() {
    TableSamples tables = none().pins("net,part,pin", "VP,R9,1", "MID,R9,1");
    assertThatThrownBy(() -> tables.plan(EMPTY, replacing()))
        .hasMessageContaining(
            "line 3, column net: pin R9.1 is on net MID here and on net VP in line 2");
  }

  @Test
  void everyProblem_isToldAtOnceAndNothingIsTaken() {
    TableSamples tables =
        none()
            .parts("designator,value", "R1,4k7", "R.2,1k", "R1,4k7")
            .pins(
                "net,part,pin,evidence", "VP,R7,1,", "VP,R1,a b,", "\u202eVP,R1,1,", "VP,R1,1,sure")
            .placements(
                "target,picture,x,y", "R1,component,4000.5,1", "R8,top,1,-2", "R1,component,a,1");
    assertThatThrownBy(() -> tables.plan(blank()))
        .isInstanceOfSatisfying(
            TableException.class,
            refused ->
                assertThat(refused.problems())
                    .extracting(p -> p.file() + " " + p.line() + " " + p.column())
                    .containsExactly(
                        "parts.csv 3 designator",
                        "parts.csv 4 designator",
                        "pins.csv 2 part",
                        "pins.csv 3 pin",
                        "pins.csv 4 net",
                        "pins.csv 5 evidence",
                        "placements.csv 2 x",
                        "placements.csv 3 target",
                        "placements.csv 3 picture",
                        "placements.csv 4 x"))
        .hasMessageContaining("it is one of measured, beeped, seen, matched, inferred, guessed")
        .hasMessageContaining("4000.5 lies outside picture component: expected 0 to 4000")
        .hasMessageContaining("which has: component, page-1");
  }

  @Test
  void pinsWithoutATableOfParts_makeTheirParts() throws TableException, EditRefusedException {
    BoardMap map = none().pins("net,part,pin,role", "VP,R1,2,end", ",R1,1,").into(EMPTY);
    assertThat(part(map, "R1").pins()).containsExactly(new Pin("1", ""), new Pin("2", "end"));
    assertThat(pins(map, "VP")).containsExactly("R1.2");
  }

  @Test
  void sections_oneRowEach_shareAPin() throws TableException, EditRefusedException {
    TableSamples tables =
        none()
            .pins(
                "net,part,pin,role,section",
                "TAIL,U1,3,emitter,Ta",
                "TAIL,U1,3,emitter,Tb",
                "VC1,U1,1,collector,Ta",
                "VN,U1,13,substrate,");
    BoardMap map = tables.into(EMPTY);
    Part array = part(map, "U1");
    assertThat(array.pins()).extracting(Pin::number).containsExactly("1", "3", "13");
    assertThat(array.sectionsOf("3")).extracting("name").containsExactly("Ta", "Tb");
    assertThat(array.section("Ta").orElseThrow().roles())
        .isEqualTo(Map.of("3", "emitter", "1", "collector"));
    assertThat(array.sectionsOf("13")).isEmpty();
    assertThat(tables.plan(map).edit().steps()).isEmpty();
  }

  @Test
  void oneDesignatorOnTwoBoards_isTwoParts() throws TableException, EditRefusedException {
    BoardMap map =
        none()
            .parts("designator,board,value", "R1,main,4k7", "R1,psu,10k")
            .pins("net,part,pin", "VP,main:R1,1", "VN,psu:R1,1")
            .into(EMPTY);
    assertThat(part(map, "R1").board()).isEqualTo(new BoardId("main"));
    assertThat(part(map, "R1~2").value()).isEqualTo("10k");
    assertThat(pins(map, "VN")).containsExactly("R1~2.1");
    assertThatThrownBy(() -> none().pins("net,part,pin", "VP,R1,1").plan(map))
        .hasMessageContaining("there are 2 parts R1, on board main, psu: write which, as main:R1");
    assertThatThrownBy(() -> none().parts("designator", "R5").plan(map))
        .hasMessageContaining("column board: the map has several boards");
  }

  @Test
  void netRenamed_freesItsNameForAnother() throws TableException, EditRefusedException {
    Net renamed = BoardMapSamples.net("VP").withName("+15V");
    BoardMap map =
        none().pins("net,part,pin", "VP,R1,1").into(BoardMapSamples.with(blank(), renamed));
    assertThat(map.nets()).extracting(Net::name).containsExactly("+15V", "VP");
    assertThat(new MapIndex(map).netsNamed("VP").get(0).id()).isEqualTo(new NetId("VP~2"));
  }

  @Test
  void placements_ofPartsPinsSectionsAndNets() throws TableException, EditRefusedException {
    TableSamples tables =
        none()
            .pins("net,part,pin,section", "/RST,U1,1,X", "R1,R1,1,")
            .placements(
                "target,picture,x,y,evidence",
                "U1,component,10,20,seen",
                "U1.1,component,11,20,measured",
                "U1/X,page-1,5,5,",
                "/RST,page-1,30,40,",
                "/RST,Page 1,60,40,",
                "net:R1,page-1,70,40,");
    BoardMap map = tables.into(blank());
    assertThat(map.placements())
        .extracting(placement -> placement.key() + " " + placement.best().word())
        .containsExactlyInAnyOrder(
            "U1 on component seen",
            "U1.1 on component measured",
            "U1/X on page-1 guessed",
            "net:/RST on page-1 guessed",
            "net:/RST on page-1 #2 guessed",
            "net:R1 on page-1 guessed");
    assertThat(tables.plan(map).edit().steps()).isEmpty();
    assertThatThrownBy(() -> none().placements("target,picture,x,y", "R1,page-1,1,1").plan(map))
        .hasMessageContaining("names a part and a net: write net:R1 for the net");
  }

  @Test
  void placements_ofWhatOnlyTheKindTells() throws TableException, EditRefusedException {
    BoardMap map =
        none()
            .parts("designator,kind,package", "U1,dual-opamp,DIP-8")
            .pins("net,part,pin", "A,U1,1")
            .placements("target,picture,x,y", "U1/Y,component,10,20", "U1.8,component,11,21")
            .into(blank());
    assertThat(map.placements())
        .extracting(placement -> placement.subject().toString())
        .containsExactly("U1.8", "U1/Y");
  }

  @Test
  void weakerWordOfTheSamePerson_addsNothing() throws TableException, EditRefusedException {
    BoardMap map = none().pins("net,part,pin,evidence", "VP,R1,1,measured").into(EMPTY);
    assertThat(none().pins("net,part,pin", "VP,R1,1").plan(map).edit().steps()).isEmpty();
    assertThat(none().pins("net,part,pin,evidence", "VP,R1,1,seen").plan(EMPTY).edit().steps())
        .hasSize(2);
  }

  @Test
  void authorThatCanBeNoName_isRefusedAtOnce() {
    assertThatThrownBy(() -> by("a\u202eb", TableSamples.MONDAY))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("author");
  }

  @Test
  void placement_elsewhereInTheMap_isAProblemUnlessTheTableReplacesIt()
      throws TableException, EditRefusedException {
    String[] first = {"target,picture,x,y", "R1,component,10,20"};
    BoardMap map = none().placements(first).into(divider());
    TableSamples moved = none().placements("target,picture,x,y", "R1,component,50,60");
    assertThatThrownBy(() -> moved.plan(map))
        .hasMessageContaining(
            "R1 is placed on component at 10.0, 20.0 in the map and at 50.0, 60.0");
    BoardMap replaced = moved.into(map, replacing());
    assertThat(replaced.placements()).hasSize(1);
    assertThat(replaced.placements().at(0).at().x()).isEqualTo(50);
    TableSamples twice =
        none().placements("target,picture,x,y", "R1,component,5,6", "R1,component,7,8");
    assertThatThrownBy(() -> twice.plan(divider(), replacing()))
        .hasMessageContaining("line 3, column target: R1 is placed on component at 5.0, 6.0");
  }

  /** A table of 20,000 pins, taken whole, and again to no effect. */
  @Test
  void largeTables_areTakenWhole() throws TableException, EditRefusedException {
    StringBuilder parts = new StringBuilder("designator,kind,value\n");
    StringBuilder pins = new StringBuilder("net,part,pin\n");
    for (int i = 0; i < 10_000; i++) {
      parts.append('R').append(i).append(",resistor,4k7\n");
      pins.append('N').append(i / 2).append(",R").append(i).append(",1\n");
      pins.append('N').append(i / 3 + 5_000).append(",R").append(i).append(",2\n");
    }
    Map<TableSort, TableSource> sources =
        Map.of(
            TableSort.PARTS,
            new TableSource("parts.csv", parts.toString().getBytes(StandardCharsets.UTF_8)),
            TableSort.PINS,
            new TableSource("pins.csv", pins.toString().getBytes(StandardCharsets.UTF_8)));
    ImportPlan plan = TableImport.plan(blank(), sources, by("ann", TableSamples.MONDAY));
    BoardMap map = plan.edit().applyTo(blank());
    assertThat(plan.summary().pinsJoined()).isEqualTo(20_000);
    assertThat(map.parts()).hasSize(10_000);
    assertThat(TableImport.plan(map, sources, by("ann", TableSamples.MONDAY)).edit().steps())
        .isEmpty();
  }
}
