package org.relegend.demo.route;

import java.util.ArrayList;
import java.util.List;
import org.relegend.demo.design.Spot;

/**
 * One net, or one channel's share of it, to be routed: the pads to join, and shares routed
 * elsewhere that it must join as well. A twinned job's copper stands once more one shift further
 * down, for net {@code twinNet}.
 */
final class Job {
  /** Copper of another job that is to be joined: as it stands, or its twin further down. */
  record Share(Job job, boolean twin) {}

  final String name;
  final int net;
  final int twinNet;
  final boolean twinned;
  final List<Spot> pads;
  final List<Share> shares;

  /** Each path is a run of nodes, {@code layer * cells + cell}. */
  List<int[]> paths = new ArrayList<>();

  /** The cells from which this job keeps other tracks away. */
  int[] tracks = {};

  /** The cells over which this job keeps other links away. */
  int[] above = {};

  Job(String name, int net, int twinNet, boolean twinned, List<Spot> pads, List<Share> shares) {
    this.name = name;
    this.net = net;
    this.twinNet = twinNet;
    this.twinned = twinned;
    this.pads = pads;
    this.shares = shares;
  }

  boolean mains() {
    return name.startsWith("MAINS");
  }

  /** Whether both carry one net, so that their copper may touch. */
  boolean kin(Job other) {
    return net == other.net || other.twinNet == net || twinNet == other.net;
  }
}
