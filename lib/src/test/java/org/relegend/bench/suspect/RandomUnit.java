package org.relegend.bench.suspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.relegend.solve.BipolarTransistor;
import org.relegend.solve.Device;
import org.relegend.solve.DeviceLaw;
import org.relegend.solve.Fault;
import org.relegend.solve.FieldEffectTransistor;
import org.relegend.solve.Junction;
import org.relegend.solve.Netlist;
import org.relegend.solve.OperatingPoint;
import org.relegend.solve.OperationalAmplifier;
import org.relegend.solve.Potentiometer;
import org.relegend.solve.Resistance;
import org.relegend.solve.Valve;

/**
 * A unit whose parts differ from the models that predict it: each resistor anywhere within 5 %,
 * transistors' beta from half to double, Is from a third to three times, thresholds, offsets and
 * emission likewise; each kind also off as a whole, as another maker's would be. Drawn by seed.
 */
final class RandomUnit {
  private final Random random;
  private final double betas;
  private final double saturations;
  private final double thresholds;
  private final double emissions;

  private RandomUnit(long seed) {
    random = new Random(seed);
    betas = Math.exp(0.4 * random.nextGaussian());
    saturations = Math.exp(0.6 * random.nextGaussian());
    thresholds = 0.2 * random.nextGaussian();
    emissions = Math.exp(0.1 * random.nextGaussian());
  }

  /** The netlist of a healthy unit. */
  static Netlist of(Netlist model, long seed) {
    RandomUnit unit = new RandomUnit(seed);
    List<Device> devices = new ArrayList<>();
    model.devices().forEach(device -> devices.add(device.with(unit.drawn(device.law()))));
    return model.withDevices(devices);
  }

  private double about(double deviation) {
    return Math.exp(deviation * Math.max(-2, Math.min(2, random.nextGaussian())));
  }

  private DeviceLaw drawn(DeviceLaw law) {
    if (law instanceof Resistance r) {
      return r.ohms() <= 1 ? r : new Resistance(r.ohms() * (0.95 + 0.1 * random.nextDouble()));
    }
    if (law instanceof Potentiometer pot) {
      return new Potentiometer(
          pot.ohms() * (0.85 + 0.3 * random.nextDouble()),
          0.4 + 0.2 * random.nextDouble(),
          pot.contact(),
          pot.tolerance());
    }
    if (law instanceof BipolarTransistor q) {
      return new BipolarTransistor(
          q.polarity(),
          q.saturation() * saturations * about(0.15),
          q.forwardGain() * betas * about(0.25),
          q.reverseGain(),
          q.earlyVolts(),
          q.voltSpread(),
          q.gainSpread());
    }
    if (law instanceof FieldEffectTransistor q) {
      double threshold = q.threshold() * (1 + thresholds / 2 + 0.1 * (random.nextDouble() - 0.5));
      return q.with(threshold, q.beta() * about(0.15));
    }
    if (law instanceof OperationalAmplifier u) {
      return u.withOffset(0.002 * random.nextGaussian()).withBias(u.bias() * about(0.4));
    }
    if (law instanceof Valve v) {
      return v.withEmission(emissions * about(0.08));
    }
    return law instanceof Junction d ? junction(d) : law;
  }

  private Junction junction(Junction d) {
    return new Junction(
        d.saturation() * saturations * about(0.2),
        d.emission(),
        d.breakdown() * (0.97 + 0.06 * random.nextDouble()),
        d.breakdownAmperes(),
        d.breakdownEmission(),
        d.voltSpread(),
        d.breakdownSpread());
  }

  /** What a meter of 10 megohms shows with this fault; empty where there is no solution. */
  static Map<String, Double> shown(Netlist healthy, Fault fault) {
    return shown(OperatingPoint.of(healthy).changedTo(fault.appliedTo(healthy)));
  }

  /** What a meter of 10 megohms shows at each node, rounded to its digits. */
  static Map<String, Double> shown(OperatingPoint point) {
    Map<String, Double> shown = new TreeMap<>();
    if (point.solved()) {
      for (String node : point.netlist().nodes()) {
        shown.put(node, digits(point.voltsUnderMeter(node, 10e6).orElse(0)));
      }
    }
    return shown;
  }

  /** Three and a half digits of the range that fits. */
  private static double digits(double volts) {
    double step = Math.abs(volts) < 2 ? 1e-3 : Math.abs(volts) < 20 ? 1e-2 : 0.1;
    return Math.round(volts / step) * step;
  }
}
