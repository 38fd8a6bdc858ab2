package org.relegend.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.map.Net;
import org.relegend.map.Subject;

/** Several nets under one name: tables and typed lines can't tell them apart. */
final class NetNameTwice implements Check {
  @Override
  public String code() {
    return "net-name-twice";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    Set<String> names = new LinkedHashSet<>();
    context.map().nets().forEach(net -> names.add(net.name()));
    List<Finding> findings = new ArrayList<>();
    for (String name : names) {
      List<Net> nets = context.index().netsNamed(name);
      if (nets.size() > 1) {
        findings.add(
            new Finding(
                code(),
                Severity.WARNING,
                nets.stream().map(net -> Subject.of(net.id())).toList(),
                "There are %d nets called %s".formatted(nets.size(), name),
                "Join them if they are one net; else give one of them another name."));
      }
    }
    return findings;
  }
}
