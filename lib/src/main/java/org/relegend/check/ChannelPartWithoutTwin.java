package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Part;
import org.relegend.map.Subject;

/** Parts without a twin in a channel where others have one. */
final class ChannelPartWithoutTwin implements Check {
  @Override
  public String code() {
    return "channel-part-without-twin";
  }

  /** One finding a channel; a channel of which no twins were declared has nothing to say. */
  @Override
  public List<Finding> inspect(CheckContext context) {
    Map<String, List<Part>> channels =
        context.map().parts().stream()
            .filter(part -> !part.channel().isEmpty())
            .collect(Collectors.groupingBy(Part::channel, TreeMap::new, Collectors.toList()));
    List<Finding> findings = new ArrayList<>();
    channels.forEach(
        (channel, parts) -> {
          List<Subject> alone =
              parts.stream()
                  .map(part -> Subject.of(part.id()))
                  .filter(part -> context.index().twinsOf(part).isEmpty())
                  .toList();
          if (!alone.isEmpty() && alone.size() < parts.size()) {
            findings.add(finding(context, channel, alone));
          }
        });
    return findings;
  }

  private Finding finding(CheckContext context, String channel, List<Subject> alone) {
    return new Finding(
            code(),
            Severity.INFORMATION,
            alone,
            "Channel %s: %s %s no twin: %s"
                .formatted(
                    channel,
                    CountText.count(alone.size(), "part"),
                    CountText.verb(alone.size(), "has", "have"),
                    context.names(alone)),
            "Declare the twin where there is one; a part that only this channel has needs none.")
        .about(channel);
  }
}
