package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Channel;
import org.relegend.map.Edit;
import org.relegend.map.MapTables;
import org.relegend.map.NameRules;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Parts and nets of channels that the map doesn't list. */
final class ChannelUnknown implements Check {
  @Override
  public String code() {
    return "channel-unknown";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<String, List<Subject>> used = new TreeMap<>(NameRules.NATURAL);
    for (Part part : context.map().parts()) {
      note(context, used, part.channel(), Subject.of(part.id()));
    }
    for (Net net : context.map().nets()) {
      note(context, used, net.channel(), Subject.of(net.id()));
    }
    List<Finding> findings = new ArrayList<>();
    used.forEach((channel, subjects) -> findings.add(finding(context, channel, subjects)));
    return findings;
  }

  private static void note(
      CheckContext context, Map<String, List<Subject>> used, String channel, Subject subject) {
    if (!channel.isEmpty() && !context.map().channels().has(channel)) {
      used.computeIfAbsent(channel, name -> new ArrayList<>()).add(subject);
    }
  }

  private Finding finding(CheckContext context, String channel, List<Subject> subjects) {
    return new Finding(
        code(),
        Severity.WARNING,
        subjects,
        channel,
        Optional.empty(),
        "The map doesn't list channel %s, but has in it: %s"
            .formatted(channel, context.names(subjects)),
        "Add the channel, or correct its name.",
        added(channel));
  }

  private static Optional<Edit> added(String channel) {
    try {
      return Optional.of(MapTables.CHANNELS.put(new Channel(channel, "", "")));
    } catch (IllegalArgumentException noName) {
      return Optional.empty();
    }
  }
}
