package org.relegend.viewer.mode.twins;

import java.util.List;
import java.util.stream.Collectors;
import org.relegend.map.Subject;
import org.relegend.viewer.session.ChangeNotifier;
import org.relegend.viewer.session.Notice;
import org.relegend.viewer.session.Session;

/** Says why something has no twin to go to. */
public record NoTwin(Session session, ChangeNotifier hub) {
  public void say(Subject subject) {
    String name = session.map().nameOf(subject);
    String channel = ChannelComparison.channelOf(session, subject);
    List<Subject> several = session.document().twins().several(subject);
    if (!several.isEmpty()) {
      hub.say(
          Notice.Kind.NO_TWIN_ALONE,
          name,
          several.stream().map(session.map()::nameOf).collect(Collectors.joining(", ")));
    } else if (channel.isEmpty()) {
      hub.say(Notice.Kind.NO_TWIN, name);
    } else {
      hub.say(Notice.Kind.NO_TWIN_CHANNEL, name, channel);
    }
  }
}
