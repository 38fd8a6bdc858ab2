package org.relegend.solve;

import java.util.List;
import org.hipparchus.analysis.differentiation.Gradient;

/**
 * An op-amp: non-inverting input, inverting input, output, positive supply, negative supply. The
 * output aims at gain times the input voltage, bends into its limits as x / sqrt(1 + x²), and gives
 * no more than its limiting current. A floating input is carried by its bias current to a supply,
 * where the current ends.
 *
 * @param gain open loop, at direct current
 * @param bandwidth gain times bandwidth, in hertz
 * @param offset input offset in volts: added to the non-inverting input
 * @param bias current into each input, in amperes; negative where it flows out
 * @param inputOhms between the inputs
 * @param outputOhms open loop
 * @param limit of the output current, in amperes
 * @param below how far below the positive supply the output ends, in volts
 * @param above how far above the negative supply it ends
 * @param draw current from supply to supply, in amperes
 * @param offsetSpread standard deviation of the offset, in volts
 */
public record OperationalAmplifier(
    double gain,
    double bandwidth,
    double offset,
    double bias,
    double inputOhms,
    double outputOhms,
    double limit,
    double below,
    double above,
    double draw,
    double offsetSpread)
    implements SmoothLaw {
  private static final int PLUS = 0;
  private static final int MINUS = 1;
  private static final int OUT = 2;
  private static final int HIGH = 3;
  private static final int LOW = 4;

  public OperationalAmplifier {
    boolean positive = gain > 0 && bandwidth > 0 && inputOhms > 0 && outputOhms > 0 && limit > 0;
    if (!positive || !Double.isFinite(offset) || !Double.isFinite(bias)) {
      throw new IllegalArgumentException("no op-amp: gain %s, offset %s".formatted(gain, offset));
    }
  }

  @Override
  public int terminals() {
    return 5;
  }

  @Override
  public Gradient[] currents(Gradient[] v) {
    Gradient span = v[HIGH].subtract(v[LOW]);
    Gradient half = SmoothLaw.positive(span.subtract(below + above), 0.1).multiply(0.5);
    Gradient middle = v[HIGH].add(v[LOW]).add(above - below).multiply(0.5);
    Gradient input = v[PLUS].subtract(v[MINUS]).add(offset).multiply(gain);
    Gradient aim = middle.add(half.multiply(SmoothLaw.saturated(input.divide(half))));
    Gradient free = aim.subtract(v[OUT]).divide(outputOhms);
    Gradient given = SmoothLaw.saturated(free.divide(limit)).multiply(limit);
    Gradient sourced = SmoothLaw.positive(given, 1e-5);
    Gradient rest = SmoothLaw.saturated(span).multiply(draw);
    Gradient between = v[PLUS].subtract(v[MINUS]).divide(inputOhms);
    Gradient biasPlus = bias(v, PLUS);
    Gradient biasMinus = bias(v, MINUS);
    Gradient fromHigh = rest.add(sourced);
    Gradient fromLow = rest.negate().subtract(sourced).add(given);
    Gradient biases = biasPlus.add(biasMinus);
    return new Gradient[] {
      between.add(biasPlus),
      between.negate().add(biasMinus),
      given.negate(),
      bias < 0 ? fromHigh.subtract(biases) : fromHigh,
      bias < 0 ? fromLow : fromLow.subtract(biases)
    };
  }

  /** The bias current, which ends where the input comes to the supply that it flows to. */
  private Gradient bias(Gradient[] v, int input) {
    Gradient room = bias < 0 ? v[HIGH].subtract(v[input]) : v[input].subtract(v[LOW]);
    return SmoothLaw.saturated(room.multiply(5)).multiply(bias);
  }

  @Override
  public boolean limit(double[] from, double[] to) {
    double span = Math.max(1, from[HIGH] - from[LOW] - below - above) / 2 / gain;
    double old = (from[PLUS] - from[MINUS] + offset) / span;
    double next = (to[PLUS] - to[MINUS] + offset) / span;
    double most = Math.max(3, 5 * Math.abs(old));
    double limited =
        old * next < 0 && Math.abs(old) > 3
            ? Math.max(-1, Math.min(1, next))
            : Math.max(-most, Math.min(most, next));
    if (limited == next) {
      return false;
    }
    to[PLUS] = to[MINUS] - offset + limited * span;
    return true;
  }

  /** One pole: A / (1 + j f A / bandwidth), on what follows the inputs. */
  @Override
  public void react(double omega, double[] g, double[] b) {
    double ratio = omega / (2 * Math.PI) * gain / bandwidth;
    double real = 1 / (1 + ratio * ratio);
    for (int row : new int[] {OUT, HIGH, LOW}) {
      for (int column : new int[] {PLUS, MINUS}) {
        double slope = g[row * 5 + column];
        g[row * 5 + column] = slope * real;
        b[row * 5 + column] = -slope * real * ratio;
      }
    }
  }

  @Override
  public DeviceLaw withGainAtMost(double most) {
    return gain <= most ? this : with(most, offset, offsetSpread);
  }

  /** The same with an offset so large that the output stays at one of its ends. */
  public OperationalAmplifier withOffset(double volts) {
    return with(gain, volts, offsetSpread);
  }

  private OperationalAmplifier with(double otherGain, double otherOffset, double spread) {
    return new OperationalAmplifier(
        otherGain,
        bandwidth,
        otherOffset,
        bias,
        inputOhms,
        outputOhms,
        limit,
        below,
        above,
        draw,
        spread);
  }

  /** The same with another bias current. */
  public OperationalAmplifier withBias(double amperes) {
    return new OperationalAmplifier(
        gain,
        bandwidth,
        offset,
        amperes,
        inputOhms,
        outputOhms,
        limit,
        below,
        above,
        draw,
        offsetSpread);
  }

  @Override
  public List<DeviceLaw> spread() {
    return List.of(withOffset(offset + offsetSpread), withBias(bias * 1.7));
  }
}
