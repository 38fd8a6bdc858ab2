package org.relegend.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTest {
  private static final Json.Obj SAMPLE =
      Json.object()
          .put("node", "A_ATT")
          .put("x", 12.5)
          .put("count", 3)
          .put("seen", true)
          .put("none", Json.none())
          .put("empty", List.of())
          .put("pins", Json.array(List.of("1", "2"), pin -> Json.object().put("pin", pin)))
          .put("names", Json.texts(List.of("a", "b")));

  @Test
  void toText_isOneIndentedDocumentInTheOrderOfPutting() {
    assertThat(SAMPLE.toText())
        .isEqualTo(
            """
            {
              "node" : "A_ATT",
              "x" : 12.5,
              "count" : 3,
              "seen" : true,
              "none" : null,
              "empty" : [ ],
              "pins" : [
                {
                  "pin" : "1"
                },
                {
                  "pin" : "2"
                }
              ],
              "names" : [
                "a",
                "b"
              ]
            }
            """);
  }

  @Test
  void put_leavesTheObjectItIsCalledOn() {
    Json.Obj first = Json.object().put("a", 1);
    Json.Obj second = first.put("b", 2);
    assertThat(first).isEqualTo(Json.object().put("a", 1)).isNotEqualTo(second);
  }

  @Test
  void put_ofAFieldThatIsThere_isRefused() {
    assertThatThrownBy(() -> SAMPLE.put("node", "B"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"node\"");
  }

  @Test
  void array_isACopy() {
    List<Json> values = new ArrayList<>(List.of(Json.of(1)));
    Json.Arr array = Json.array(values);
    values.clear();
    assertThat(array.values()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void numbersThatAreNone_areRefused(double value) {
    assertThatThrownBy(() -> Json.of(value)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.0, 0.1, 1e-7, 123456789.125, 1e15, 9007199254740992.0, -2.5e300})
  void numbers_areReadBackAsTheyWere(double value) throws Exception {
    assertThat(parsed(Json.of(value)).doubleValue()).isEqualTo(value + 0.0);
  }

  @Test
  void wholeNumbers_keepEveryDigit() throws Exception {
    assertThat(parsed(Json.of(Long.MAX_VALUE)).longValue()).isEqualTo(Long.MAX_VALUE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "a\"b\\c", "two\nlines\tand\u0000", "Ω µ \u202E \uD83D\uDD27", "</s>"})
  void texts_areReadBackAsTheyWere(String text) throws Exception {
    assertThat(parsed(Json.object().put(text, text)).get(text).textValue()).isEqualTo(text);
  }

  private static JsonNode parsed(Json json) throws Exception {
    return new ObjectMapper().readTree(json.toText());
  }
}
