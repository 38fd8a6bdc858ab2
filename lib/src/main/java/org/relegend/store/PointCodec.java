package org.relegend.store;

import static org.relegend.store.Codecs.NUMBER;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.relegend.map.PicturePairs;
import org.relegend.map.Point;

/** Points as lists of numbers without names, since maps hold many. */
final class PointCodec<V> implements Codec<V> {
  /** A point as [x, y]. */
  static final Codec<Point> POINT =
      new PointCodec<>(
          "a point",
          "[x, y]",
          2,
          numbers -> new Point(numbers[0], numbers[1]),
          point -> List.of(point.x(), point.y()));

  /** A spot on two pictures as [x, y, x, y]. */
  static final Codec<PicturePairs.Spot> SPOT =
      new PointCodec<>(
          "a pair",
          "[x, y, x, y]",
          4,
          numbers ->
              new PicturePairs.Spot(
                  new Point(numbers[0], numbers[1]), new Point(numbers[2], numbers[3])),
          spot -> List.of(spot.onA().x(), spot.onA().y(), spot.onB().x(), spot.onB().y()));

  private final String what;
  private final String form;
  private final int count;
  private final Function<double[], V> made;
  private final Function<V, List<Double>> numbers;

  private PointCodec(
      String what,
      String form,
      int count,
      Function<double[], V> made,
      Function<V, List<Double>> numbers) {
    this.what = what;
    this.form = form;
    this.count = count;
    this.made = made;
    this.numbers = numbers;
  }

  @Override
  public V read(JsonParser in) throws IOException {
    if (in.currentToken() != JsonToken.START_ARRAY) {
      throw UnfitJsonException.here(in, what + " " + form + " must stand here");
    }
    double[] read = new double[count];
    for (int i = 0; i < count; i++) {
      in.nextToken();
      read[i] = NUMBER.read(in);
    }
    if (in.nextToken() != JsonToken.END_ARRAY) {
      String numeral = count == 2 ? "two" : "four";
      throw UnfitJsonException.here(in, "%s has %s numbers, %s".formatted(what, numeral, form));
    }
    try {
      return made.apply(read);
    } catch (IllegalArgumentException e) {
      throw UnfitJsonException.here(in, String.valueOf(e.getMessage()));
    }
  }

  @Override
  public void write(V value, JsonGenerator out) throws IOException {
    out.writeStartArray();
    for (double number : numbers.apply(value)) {
      NUMBER.write(number, out);
    }
    out.writeEndArray();
  }
}
