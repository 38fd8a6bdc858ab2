package org.relegend.demo.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.relegend.demo.design.Design;
import org.relegend.demo.design.PlacedPin;
import org.relegend.demo.design.Tables;

class SchematicTest {
  private final Design design = Tables.leveller();
  private final Schematic schematic = new Schematic(design);

  /** Reads the net list off the drawn wires and dots, and compares it with the table. */
  @Test
  void drawnWires_giveTheNetsOfTheTable_asDrawn() {
    Map<String, Set<String>> table = new TreeMap<>();
    for (PlacedPin pin : design.pins()) {
      table.computeIfAbsent(pin.drawnNet(), net -> new TreeSet<>()).add(pin.name());
    }
    assertThat(netsOfTheDrawing()).containsExactlyInAnyOrderElementsOf(table.values());
  }

  @Test
  void wiresThatMeetWithoutADot_endOnNothingElse() {
    for (int page = 1; page <= 2; page++) {
      Plan plan = schematic.plan(page);
      for (List<Dot> wire : plan.wires()) {
        for (Dot end : List.of(wire.get(0), wire.get(wire.size() - 1))) {
          boolean dotted = plan.joints().stream().anyMatch(joint -> near(joint, end));
          boolean meets =
              plan.wires().stream()
                  .anyMatch(other -> other != wire && onto(end, other) && !endsAt(other, end));
          assertThat(!meets || dotted).as("page " + page + " at " + end).isTrue();
        }
      }
    }
  }

  @Test
  void firstPage_carriesEveryNameAsText_whereTheMarksSay() throws IOException {
    Map<String, List<Dot>> words = words(1);
    List<Mark> names =
        schematic.marks(1).stream().filter(mark -> mark.kind() == Mark.Kind.NAME).toList();
    assertThat(names).hasSizeGreaterThan(80);
    for (Mark name : names) {
      assertThat(words.getOrDefault(name.subject(), List.of()))
          .as(name.toString())
          .anyMatch(
              at -> Math.abs(at.x() - name.at().x()) < 5 && Math.abs(at.y() - name.at().y()) < 3);
    }
  }

  @Test
  void secondPage_isAnImageWithoutText() throws IOException {
    assertThat(words(2)).isEmpty();
  }

  @Test
  void everyPart_hasItsBodyOrSectionsOnOnePage() {
    Set<String> drawn = new TreeSet<>();
    for (int page = 1; page <= 2; page++) {
      for (Mark mark : schematic.marks(page)) {
        if (mark.kind() == Mark.Kind.BODY || mark.kind() == Mark.Kind.SECTION) {
          drawn.add(mark.subject().replaceAll("/.*", ""));
        }
      }
    }
    assertThat(drawn)
        .isEqualTo(
            design.parts().stream()
                .map(part -> part.designator())
                .collect(Collectors.toCollection(TreeSet::new)));
  }

  @Test
  void pdf_isTheSameEachTime() throws IOException {
    assertThat(schematic.pdf()).isEqualTo(new Schematic(design).pdf());
  }

  private List<Set<String>> netsOfTheDrawing() {
    Map<String, String> parent = new LinkedHashMap<>();
    for (int page = 1; page <= 2; page++) {
      Plan plan = schematic.plan(page);
      List<String> wires = new ArrayList<>();
      for (int k = 0; k < plan.wires().size(); k++) {
        wires.add("wire " + page + " " + k);
        parent.put(wires.get(k), wires.get(k));
      }
      for (int k = 0; k < wires.size(); k++) {
        for (int n = 0; n < k; n++) {
          if (joined(plan, plan.wires().get(k), plan.wires().get(n))) {
            unite(parent, wires.get(k), wires.get(n));
          }
        }
      }
      for (Mark mark : plan.marks()) {
        if (mark.kind() == Mark.Kind.PIN || mark.kind() == Mark.Kind.LABEL) {
          parent.putIfAbsent(mark.subject(), mark.subject());
          for (int k = 0; k < wires.size(); k++) {
            if (endsAt(plan.wires().get(k), mark.at())) {
              unite(parent, mark.subject(), wires.get(k));
            }
          }
          for (Mark other : plan.marks()) {
            if (other.kind() == Mark.Kind.PIN && near(other.at(), mark.at())) {
              parent.putIfAbsent(other.subject(), other.subject());
              unite(parent, mark.subject(), other.subject());
            }
          }
        }
      }
    }
    Map<String, Set<String>> nets = new HashMap<>();
    for (String name : parent.keySet()) {
      if (name.contains(".")) {
        nets.computeIfAbsent(root(parent, name), net -> new TreeSet<>()).add(name);
      }
    }
    return new ArrayList<>(nets.values());
  }

  /** Wires are joined where their ends coincide, or at a dot that lies on both. */
  private static boolean joined(Plan plan, List<Dot> one, List<Dot> other) {
    return endsAt(one, other.get(0))
        || endsAt(one, other.get(other.size() - 1))
        || plan.joints().stream().anyMatch(joint -> onto(joint, one) && onto(joint, other));
  }

  private static boolean endsAt(List<Dot> wire, Dot at) {
    return near(wire.get(0), at) || near(wire.get(wire.size() - 1), at);
  }

  private static boolean onto(Dot at, List<Dot> wire) {
    for (int k = 0; k + 1 < wire.size(); k++) {
      Dot a = wire.get(k);
      Dot b = wire.get(k + 1);
      double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
      double past = Math.hypot(at.x() - a.x(), at.y() - a.y());
      double left = Math.hypot(at.x() - b.x(), at.y() - b.y());
      if (past + left - length < 0.001) {
        return true;
      }
    }
    return false;
  }

  private static boolean near(Dot a, Dot b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y()) < 0.01;
  }

  private static void unite(Map<String, String> parent, String a, String b) {
    parent.put(root(parent, a), root(parent, b));
  }

  private static String root(Map<String, String> parent, String name) {
    String up = name;
    while (!parent.get(up).equals(up)) {
      up = parent.get(up);
    }
    return up;
  }

  /** The words of a page with the middles of their boxes, as PDFBox finds their letters. */
  private Map<String, List<Dot>> words(int page) throws IOException {
    List<List<TextPosition>> runs = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(schematic.pdf())) {
      PDFTextStripper reader =
          new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
              List<TextPosition> run = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
              if (run.isEmpty() || !follows(run.get(run.size() - 1), letter)) {
                run = new ArrayList<>();
                runs.add(run);
              }
              run.add(letter);
            }
          };
      reader.setStartPage(page);
      reader.setEndPage(page);
      reader.getText(document);
    }
    Map<String, List<Dot>> words = new HashMap<>();
    for (List<TextPosition> run : runs) {
      String text = run.stream().map(TextPosition::getUnicode).collect(Collectors.joining());
      TextPosition first = run.get(0);
      TextPosition last = run.get(run.size() - 1);
      double x = (first.getXDirAdj() + last.getXDirAdj() + last.getWidthDirAdj()) / 2;
      double y = first.getYDirAdj() - first.getHeightDir() / 2;
      words.computeIfAbsent(text, w -> new ArrayList<>()).add(new Dot(x, y));
    }
    return words;
  }

  private static boolean follows(TextPosition letter, TextPosition next) {
    return Math.abs(letter.getYDirAdj() - next.getYDirAdj()) < 0.1
        && Math.abs(letter.getXDirAdj() + letter.getWidthDirAdj() - next.getXDirAdj()) < 0.1;
  }
}
