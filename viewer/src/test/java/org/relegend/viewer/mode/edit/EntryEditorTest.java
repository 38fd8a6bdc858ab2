package org.relegend.viewer.mode.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.relegend.map.BoardMapSamples.TOP;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.relegend.map.BoardMap;
import org.relegend.map.NetId;
import org.relegend.map.Part;
import org.relegend.map.PartId;
import org.relegend.map.Placement;
import org.relegend.map.Potential;
import org.relegend.map.Subject;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;
import org.relegend.viewer.session.SessionBench;
import org.relegend.viewer.session.TypedName;

class EntryEditorTest {
  private static final PartId C102 = new PartId("C102");
  private static final PartId R101 = new PartId("R101");
  private static final NetId A_ATT = new NetId("A_ATT");

  private final SessionBench bench = new SessionBench(SessionBench.placedChannels());
  private final Session session = bench.session;
  private final EntryEditor entries = session.room(EntryEditor.class);

  private PartEntry part(PartId id) {
    return entries.entry(id).orElseThrow();
  }

  private static PartEntry valued(PartEntry entry, String value) {
    return new PartEntry(
        entry.designator(), entry.kind(), value, entry.casing(), entry.channel(), entry.note());
  }

  private static PartEntry called(PartEntry entry, String name) {
    return new PartEntry(
        name, entry.kind(), entry.value(), entry.casing(), entry.channel(), entry.note());
  }

  @Test
  void everyField_isTaken_asOneEdit_thatCanBeUndone() {
    BoardMap before = session.map();

    boolean taken =
        entries.change(R101, new PartEntry("R101", "res", "4k7", "axial", "C", "dark spot"));

    assertThat(taken).isTrue();
    Part after = session.map().part(R101).orElseThrow();
    assertThat(after.kind()).isEqualTo("resistor");
    assertThat(after.value()).isEqualTo("4k7");
    assertThat(after.casing()).isEqualTo("axial");
    assertThat(after.channel()).isEqualTo("C");
    assertThat(after.note()).isEqualTo("dark spot");
    assertThat(after.pins()).isEqualTo(before.part(R101).orElseThrow().pins());
    assertThat(session.map().channels().has("C")).isTrue();
    assertThat(session.document().undoLabel()).contains("Change R101");
    session.undo();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void renamedPart_keepsPlacesPinsAndTwins() {
    BoardMap before = session.map();

    assertThat(entries.change(C102, called(part(C102), "C112"))).isTrue();

    BoardMap after = session.map();
    assertThat(after.nameOf(C102)).isEqualTo("C112");
    assertThat(after.placements()).isEqualTo(before.placements());
    assertThat(after.nets()).isEqualTo(before.nets());
    assertThat(after.twins()).isEqualTo(before.twins());
    assertThat(session.document().undoLabel()).contains("Rename C102 to C112");
    assertThat(new TypedName(session.document().index()).known("C112")).contains(Subject.of(C102));
  }

  @Test
  void nameOfAnotherPart_isRefused() {
    BoardMap before = session.map();
    assertThat(entries.change(C102, called(part(C102), "C202"))).isFalse();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NAME_TAKEN);
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void nameThatCanBeNone_isRefused() {
    assertThat(entries.look(C102, called(part(C102), "C 102")).kind())
        .isEqualTo(Notice.Kind.REFUSED);
    assertThat(entries.look(C102, called(part(C102), "")).kind()).isEqualTo(Notice.Kind.REFUSED);
  }

  /** Codes of IEC 60062: the letter stands for the decimal point and the multiplier. */
  @ParameterizedTest
  @CsvSource({"R101,4k7,ENTRY_VALUE", "R101,10u,ENTRY_DOUBT", "R101,4k7k,ENTRY_DOUBT"})
  void values_areReadAsTheirKindTells(String part, String value, Notice.Kind notice) {
    PartId id = new PartId(part);
    assertThat(entries.look(id, valued(part(id), value)).kind()).isEqualTo(notice);
  }

  @Test
  void readValue_isToldInPlainUnits() {
    assertThat(entries.look(R101, valued(part(R101), "4k7")).arguments())
        .containsExactly("4k7", "4.7 kΩ");
  }

  @Test
  void unknownKind_isDoubted() {
    PartEntry odd = new PartEntry("R101", "resistance-thing", "", "", "", "");
    assertThat(entries.look(R101, odd).kind()).isEqualTo(Notice.Kind.ENTRY_KIND);
  }

  @Test
  void netThatWasMisspelt_isPutRight_andKeepsItsPins() {
    BoardMap before = session.map();

    assertThat(entries.change(A_ATT, new NetEntry("A_OUT", "dc", "-6,8", "A", ""))).isTrue();

    assertThat(session.map().net(A_ATT).orElseThrow().name()).isEqualTo("A_OUT");
    assertThat(session.map().net(A_ATT).orElseThrow().potential())
        .isEqualTo(new Potential(Potential.Nature.DC, -6.8));
    assertThat(session.map().net(A_ATT).orElseThrow().members())
        .isEqualTo(before.net(A_ATT).orElseThrow().members());
    assertThat(entries.entry(A_ATT).orElseThrow().volts()).isEqualTo("-6.8");
  }

  @ParameterizedTest
  @CsvSource({
    "B_ATT,dc,1,NET_NAME_TAKEN",
    "X,unknown,5,ENTRY_NATURE",
    "X,dc,5 A,REFUSED",
    "X,dc,five,REFUSED",
    "'',dc,5,REFUSED",
    "X,dc,5,ENTRY_FITS"
  })
  void linesOfANet_areLookedAt(String name, String nature, String volts, Notice.Kind notice) {
    assertThat(entries.look(A_ATT, new NetEntry(name, nature, volts, "", "")).kind())
        .isEqualTo(notice);
  }

  @Test
  void netThatWasMains_isDoubtedWhenItIsToBeNoMore() {
    entries.change(A_ATT, new NetEntry("A_ATT", "mains", "230", "", ""));
    assertThat(entries.look(A_ATT, new NetEntry("A_ATT", "ac", "230", "", "")).kind())
        .isEqualTo(Notice.Kind.ENTRY_MAINS);
  }

  @Test
  void removedPart_takesPlacesJoinsAndTwinsWithIt_inOneStep_afterItWasAsked() {
    BoardMap before = session.map();
    session.choose(Subject.of(C102));

    entries.askRemove();

    EntryEditor.RemoveEntry asked = (EntryEditor.RemoveEntry) session.question().orElseThrow();
    assertThat(asked).isEqualTo(new EntryEditor.RemoveEntry(Subject.of(C102), 4, 2, 0));
    assertThat(session.map()).isEqualTo(before);

    session.room(EntryEditor.class).answer(asked);

    BoardMap after = session.map();
    assertThat(after.part(C102)).isEmpty();
    assertThat(after.placements().has(new Placement.Key(TOP, Subject.of(C102), 1))).isFalse();
    assertThat(after.placements()).hasSize(before.placements().size() - 4);
    assertThat(after.net(A_ATT).orElseThrow().pins()).containsExactly(SessionBench.pin("U101.2"));
    assertThat(after.twins()).hasSize(before.twins().size() - 1);
    session.undo();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void keptPart_staysAsItWas() {
    BoardMap before = session.map();
    session.choose(Subject.of(C102));
    entries.askRemove();
    session.back();
    assertThat(session.question()).isEmpty();
    assertThat(session.map()).isEqualTo(before);
  }

  @Test
  void removedNet_leavesItsPins() {
    session.choose(Subject.of(A_ATT));
    entries.askRemove();
    session
        .room(EntryEditor.class)
        .answer((EntryEditor.RemoveEntry) session.question().orElseThrow());
    assertThat(session.map().net(A_ATT)).isEmpty();
    assertThat(session.map().part(C102)).isPresent();
  }

  @Test
  void chosenNet_goesBeforeItsCards_andTheCardsPartIsReachedToo() {
    session.choose(Subject.of(A_ATT));
    assertThat(entries.chosen()).contains(Subject.of(A_ATT));
    assertThat(entries.part()).contains(Subject.of(C102));
  }

  @Test
  void nothingChosen_isSaid() {
    assertThat(entries.chosen()).isEmpty();
    assertThat(bench.lastNotice()).isEqualTo(Notice.Kind.NOTHING_CHOSEN);
  }
}
