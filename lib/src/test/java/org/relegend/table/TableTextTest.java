package org.relegend.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableTextTest {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final TableColumns COLUMNS =
      new TableColumns(List.of("name"), List.of("value", "x"));

  private static TableText read(byte[] bytes) throws TableException {
    return TableText.read(new TableSource("t.csv", bytes), COLUMNS);
  }

  private static TableText read(String text) throws TableException {
    return read(text.getBytes(StandardCharsets.UTF_8));
  }

  /** RFC 4180 section 2: rules 5 to 7, fields in quotes with separators, line breaks and quotes. */
  @Test
  void read_quotedFields_asRfc4180HasThem() throws TableException {
    TableText table =
        read("name,value\r\n\"R1\",\"a,b\"\r\nR2,\"two\r\nlines\"\r\nR3,\"1/4\"\" jack\"");
    assertThat(table.rows())
        .extracting(row -> row.text("value"))
        .containsExactly("a,b", "two\nlines", "1/4\" jack");
    assertThat(table.rows()).extracting(TableRow::line).containsExactly(2, 3, 5);
  }

  /** RFC 4180 section 2, rule 2: the last record may or may not have an ending line break. */
  @ParameterizedTest
  @ValueSource(strings = {"name\r\nR1", "name\r\nR1\r\n", "name\nR1\n\n\n", "name\rR1\r"})
  void read_anyLineEnds_givesOneRow(String text) throws TableException {
    assertThat(read(text).rows()).extracting(row -> row.text("name")).containsExactly("R1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\t", ";", ","})
  void read_separator_isToldByTheHeader(String separator) throws TableException {
    TableText table = read("value|name\n4k7|R1".replace("|", separator));
    assertThat(table.header().separator()).isEqualTo(separator.charAt(0));
    assertThat(table.rows().get(0).text("value")).isEqualTo("4k7");
  }

  @Test
  void read_separatorLineAboveTheHeader_isSkippedAndCounted() throws TableException {
    TableText table = read("sep=;\r\nname;value\r\nR1;a,b\r\n");
    assertThat(table.rows().get(0).text("value")).isEqualTo("a,b");
    assertThat(table.rows().get(0).line()).isEqualTo(3);
  }

  @Test
  void read_rowsOfSeparatorsOnly_areSkippedAndCounted() throws TableException {
    TableText table = read(",,\n\nname,value,x\n,,\nR1,4k7,\n , \u00a0,\nR2,,1\n,,\n");
    assertThat(table.rows()).extracting(TableRow::line).containsExactly(5, 7);
  }

  @Test
  void read_emptyCellsBeyondTheHeader_areNoRaggedRow() throws TableException {
    assertThat(read("name,value\nR1,4k7,,,\n").rows()).hasSize(1);
  }

  @Test
  void read_headerInAnyCaseAndOrderWithSpaces_isKnown() throws TableException {
    assertThat(read(" Value , NAME\n4k7,R1").rows().get(0).text("name")).isEqualTo("R1");
  }

  @Test
  void read_unknownColumns_areLeftOutWithOneWarning() throws TableException {
    assertThat(read("name,price\nR1,3").warnings())
        .containsExactly("t.csv: left out: price; the columns known here are name, value, x");
    assertThat(read("name,c,d,e,f,g,h,i,j,k,l\n").warnings())
        .singleElement()
        .asString()
        .contains("c, d, e, f, g, h, i, j and 2 more;");
  }

  @ParameterizedTest
  @CsvSource({"UTF-8,true", "UTF-8,false", "UTF-16LE,true", "UTF-16BE,true", "windows-1252,false"})
  void read_encodings_areFoundOut(String charset, boolean mark) throws TableException {
    String text = (mark ? "\ufeff" : "") + "name,value\nR1,10 \u00b5F \u00b120 %";
    TableText table = read(text.getBytes(Charset.forName(charset)));
    assertThat(table.header().columns()).containsExactly("name", "value");
    assertThat(table.rows().get(0).text("value")).isEqualTo("10 \u00b5F \u00b120 %");
  }

  @Test
  void read_longSignsOfUtf8_areWhole() throws TableException {
    assertThat(read("name,value\nR1,4k7 Ω \uD835\uDEC0").rows().get(0).text("value"))
        .isEqualTo("4k7 Ω \uD835\uDEC0");
  }

  @Test
  void read_twoEncodingsInOneFile_namesALineOfEach() {
    byte[] good = "name,value\nR1,10 µF\nC2,".getBytes(StandardCharsets.UTF_8);
    byte[] bad = "22 µF\n".getBytes(WINDOWS);
    byte[] both = new byte[good.length + bad.length];
    System.arraycopy(good, 0, both, 0, good.length);
    System.arraycopy(bad, 0, both, good.length, bad.length);
    assertThatThrownBy(() -> read(both))
        .isInstanceOf(TableException.class)
        .hasMessage(
            "t.csv, line 3: is not in UTF-8 while line 2 is: save the table in one encoding, best"
                + " UTF-8");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "name,x/R1,12.5|12.5",
        "name;x/R1;12,5|12.5",
        "name;x/R1;-,5|-0.5",
        "name;x/R1;1.5|1.5",
        "name\tx/R1\t812,25|812.25",
        "name,x/R1,+7.|7"
      })
  void number_decimalPointOrComma_byTheSeparator(String text, double expected)
      throws TableException {
    TableProblems problems = new TableProblems();
    assertThat(read(text.replace('/', '\n')).rows().get(0).number("x", problems))
        .isEqualTo(OptionalDouble.of(expected));
    assertThat(problems.count()).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "name\tx\nR1\t1,234",
        "name,x\nR1,\"12,5\"",
        "name,x\nR1,1e3",
        "name;x\nR1;1.234,5",
        "name,x\nR1,NaN",
        "name,x\nR1,",
        "name,x\nR1,0x1p3",
        "name,x\nR1,\u0661"
      })
  void number_withTwoReadingsOrNone_isAProblemNamingTheCell(String text) throws TableException {
    TableProblems problems = new TableProblems();
    assertThat(read(text).rows().get(0).number("x", problems)).isEmpty();
    assertThatThrownBy(problems::throwIfAny).hasMessageStartingWith("t.csv, line 2, column x: ");
  }

  @Test
  void number_beyondAllNumbers_isAProblem() throws TableException {
    TableProblems problems = new TableProblems();
    assertThat(read("name,x\nR1," + "9".repeat(400)).rows().get(0).number("x", problems)).isEmpty();
    assertThatThrownBy(problems::throwIfAny).message().hasSizeLessThan(300);
  }

  @Test
  void read_manyRaggedRows_tellsTwentyAndCountsTheRest() {
    assertThatThrownBy(() -> read("name,value\n" + "R1\n".repeat(50)))
        .isInstanceOfSatisfying(
            TableException.class,
            e -> {
              assertThat(e.problems()).hasSize(TableProblems.LIMIT);
              assertThat(e.count()).isEqualTo(50);
            })
        .hasMessageContaining("line 2: has 1 cell where the header has 2")
        .hasMessageEndingWith("and 30 more like these");
  }
}
