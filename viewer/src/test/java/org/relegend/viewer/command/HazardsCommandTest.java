package org.relegend.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.relegend.hazard.Cautions;
import org.relegend.hazard.HazardMaps;
import org.relegend.hazard.SupplySketch;
import org.relegend.map.BoardMap;
import org.relegend.map.MapTables;
import org.relegend.map.Potential;
import org.relegend.map.ZoneId;
import org.relegend.store.MapFolder;
import org.relegend.store.StoreException;

class HazardsCommandTest {
  private final Shell shell = new Shell();

  @TempDir private Path temp;

  private Path saved(BoardMap map) throws StoreException {
    Path folder = temp.resolve("map");
    assertThat(shell.run("new", folder, "--title", "Demo").code()).isZero();
    try (MapFolder opened = MapFolder.open(folder)) {
      opened.save(map);
    }
    return folder;
  }

  private static Schema schema() throws IOException {
    try (InputStream in = HazardsCommand.class.getResourceAsStream("hazards.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
    }
  }

  @Test
  void demo_json_holdsToTheSchemaAndNamesTheMainsPins() throws StoreException, IOException {
    Shell.Run run = shell.run("hazards", saved(HazardMaps.demo()), "--json");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(schema().validate(run.out(), InputFormat.JSON)).isEmpty();
    assertThat(run.out()).contains("\"J1.L\"", "\"T1.2\"", "\"iec-61010\"");
    String reached = run.out().substring(0, run.out().indexOf("\"barriers\""));
    assertThat(reached).doesNotContain("\"T1.3\"").doesNotContain("J1.E");
  }

  @Test
  void demo_text_tellsTheCautionBeforeFigures_andNoTimeOfNothing() throws StoreException {
    Shell.Run run = shell.run("hazards", saved(HazardMaps.demo()));
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains(
            "T1: mains at T1.1 T1.2; kept from T1.3 T1.4 T1.5 T1.6",
            "1000 \u00b5F at 23.1 V: 267 mJ",
            "through R2 (4.7 k\u03a9): never above 60 V by these figures; 1 V after at least 14.8 s;",
            "a discharge resistor of 1.5 k\u03a9 has to bear 356 mW at first and 267 mJ in all")
        .doesNotContain("at least 0 s")
        .doesNotContainPattern("[0-9]e-[0-9]");
    Cautions.all().forEach(caution -> assertThat(run.out()).contains(caution.title() + ". "));
    assertThat(run.out().lines().mapToInt(String::length).max().orElseThrow())
        .isLessThanOrEqualTo(100);
    assertThat(run.out().indexOf("Unplug first")).isBetween(0, run.out().indexOf("J1.L"));
  }

  @Test
  void unmarkedDanger_isToldAndExitCode1() throws StoreException, IOException {
    BoardMap demo = HazardMaps.demo();
    Path folder = saved(demo.with(MapTables.ZONES, demo.zones().without(new ZoneId("mains-top"))));
    Shell.Run run = shell.run("hazards", folder);
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(run.out()).contains("UNMARKED: F1.1 on component at 450,180 lies in no mains zone.");
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    assertThat(json.out()).contains("\"proposals\"");
  }

  /** Everything that can be wrong with a supply at once still holds to the schema. */
  @Test
  void muddledMap_isToldInFull() throws StoreException, IOException {
    BoardMap map = HazardMaps.demo();
    map = HazardMaps.joined(map, "R9", "resistor", "1M", "MAINS_N_IN", "0V");
    map = HazardMaps.joined(map, "C9", "cap", "2n2", "MAINS_L_SW", "AC_A");
    map = HazardMaps.joined(map, "X9", "", "", "MAINS_L_SW", "EARTH");
    map = HazardMaps.with(map, "MAINS_L_IN", Potential.Nature.DC, 0);
    Path folder = saved(map);
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(json.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    Shell.Run text = shell.run("hazards", folder, "--limits", "osha");
    assertThat(text.out())
        .contains(
            "LIVE CHASSIS: mains reaches 0V",
            "mains comes round through",
            "29 CFR 1910.303",
            "No voltage is given for MAINS_L_IN",
            "J1.L on MAINS_L_IN brings the mains in");
  }

  @Test
  void unknownLimits_areRefusedWithTheNames() throws StoreException {
    Shell.Run run = shell.run("hazards", saved(HazardMaps.demo()), "--limits", "nosuch");
    assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(run.err().strip()).contains("iec-61010-wet", "us-navy").doesNotContain("\n");
  }

  @Test
  void emptyMap_claimsNothing() {
    Path folder = temp.resolve("empty");
    shell.run("new", folder, "--title", "Empty");
    Shell.Run run = shell.run("hazards", folder);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("that is not known, not absent");
  }

  /** What is suspected and what comes in a fault stand apart from what is known. */
  @Test
  void supplyWithoutVolts_isToldAsUnknown_andFaultsInTheirOwnGrade()
      throws StoreException, IOException {
    Path folder =
        saved(
            SupplySketch.of(
                    """
                    J1 mains-terminal - L=:L N=:N
                    J2 connector IEC_inlet_230V 1=:X1 2=:X2
                    T1 transformer - 1=primary:L 2=primary:N 3=secondary:A 4=secondary:B
                    V1 triode - A=:HT G=:G K=:K
                    R1 resistor 10M 1=:PLUS 2=:MINUS
                    BT1 battery 12V_lead-acid +=:BP -=:BM
                    net HT dc 300
                    net PLUS dc 45
                    net MINUS dc -45
                    """)
                .map());
    Shell.Run run = shell.run("hazards", folder);
    assertThat(run.code()).isEqualTo(ExitCode.DOES_NOT_HOLD);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "LOOKS LIKE MAINS: J2 is called a part of the mains",
            "UNKNOWN, TAKE AS HIGH: A, B (fed by a winding of T1 whose voltage nobody told)",
            "Between PLUS and MINUS there are 90 V.",
            "May carry 300 V from HT if a part fails: K by V1, G by V1.",
            "BT1 (lead-acid) stays live with the plug out",
            "kept from T1.3 T1.4, if its pins are as the map says");
    Shell.Run json = shell.run("hazards", folder, "--json");
    assertThat(schema().validate(json.out(), InputFormat.JSON)).isEmpty();
    assertThat(json.out()).contains("\"mayReach\"", "\"looksLikeMains\"", "\"across\"");
  }
}
