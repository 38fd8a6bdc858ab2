package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Edit;
import org.relegend.map.EditGroup;
import org.relegend.map.Net;
import org.relegend.map.NetEdits;
import org.relegend.map.PinRef;
import org.relegend.map.Subject;

/** One net that was entered twice, under two names. */
final class NetsOfSamePins implements Check {
  @Override
  public String code() {
    return "nets-of-same-pins";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<List<PinRef>, List<Net>> byPins = new LinkedHashMap<>();
    for (Net net : context.map().nets()) {
      if (!net.members().isEmpty()) {
        byPins.computeIfAbsent(net.pins(), pins -> new ArrayList<>(1)).add(net);
      }
    }
    return byPins.values().stream().filter(nets -> nets.size() > 1).map(this::finding).toList();
  }

  private Finding finding(List<Net> nets) {
    String names = nets.stream().map(Net::name).collect(Collectors.joining(" and "));
    Net kept = nets.get(0);
    List<Edit> merges =
        nets.stream()
            .skip(1)
            .map(gone -> (Edit) new NetEdits.MergeNets(kept.id(), gone.id()))
            .toList();
    return new Finding(
            code(),
            Severity.WARNING,
            nets.stream().map(net -> Subject.of(net.id())).toList(),
            "The nets %s have the same %s: one net under several names"
                .formatted(names, CountText.count(kept.members().size(), "pin")),
            "Join them, and keep the better name.")
        .fixedBy(merges.size() == 1 ? merges.get(0) : new EditGroup("Join nets", merges));
  }
}
