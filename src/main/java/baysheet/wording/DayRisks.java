package baysheet.wording;

import baysheet.garage.DayJob;
import baysheet.garage.GarageDay;
import baysheet.garage.GarageDay.Part;
import baysheet.garage.GarageDay.Placed;
import baysheet.garage.GarageDay.Wait;
import baysheet.sheet.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is at risk on a day, each with its reason. */
record DayRisks(GarageDay day) {
  /** A promise that holds less often than this is at risk. */
  private static final double SAFE = 0.9;

  /** Promises that do not hold or may not, and what goes on after closing. */
  List<DayText.RiskText> all() {
    List<DayText.RiskText> risks = new ArrayList<>();
    int closes = day.open().closes().toSecondOfDay() / 60;
    for (Placed job : day.jobs()) {
      Optional<String> what = what(job, closes);
      what.ifPresent(it -> risks.add(new DayText.RiskText(it, reason(job))));
    }
    return risks;
  }

  private static Optional<String> what(Placed job, int closes) {
    String number = named(job);
    String ready = "expected ready at " + DayWords.clock(job.to());
    if (job.late() > 0) {
      return Optional.of(
          "%s will not be ready by %s: %s."
              .formatted(number, DayWords.clock(job.promised().orElseThrow()), ready));
    } else if (job.promised().isPresent() && job.chance() < SAFE) {
      return Optional.of(
          "%s is at risk: promised for %s, %s; the promise holds with a probability of %s."
              .formatted(
                  number,
                  DayWords.clock(job.promised().get()),
                  ready,
                  DayWords.percent(job.chance())));
    } else if (job.to() > closes) {
      return Optional.of(
          "%s is not finished at closing time, %s: %s. %s"
              .formatted(number, DayWords.clock(closes), ready, overnight(job, closes)));
    }
    return Optional.empty();
  }

  /** Whoever telephones needs the car and the customer. */
  private static String named(Placed job) {
    Heading heading = job.job().sheet().heading();
    String whose =
        Stream.of(heading.vehicle().plate(), heading.request().customer())
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", "));
    return job.job().number() + (whose.isEmpty() ? "" : " (" + whose + ")");
  }

  /** How it can be left for the next day. */
  private static String overnight(Placed job, int closes) {
    List<Part> done = job.parts().stream().filter(part -> part.to() <= closes).toList();
    if (done.isEmpty()) {
      return job.parts().size() > 1
          ? "No stage of it ends by closing time."
          : "With stages: 2 in its file it could rest overnight.";
    }
    Part last = done.get(done.size() - 1);
    return "It can rest overnight after sheet %s, at %s: baysheet carry %s DAY --step %s."
        .formatted(
            last.sheet(), DayWords.clock(last.to()), job.job().number(), lastStep(job, last));
  }

  private static int lastStep(Placed job, Part part) {
    return job.job().rests().stream()
        .filter(rest -> rest.sheet().equals(part.sheet()))
        .findFirst()
        .orElseThrow()
        .step();
  }

  /** What it waits for; else the time at which the vehicle arrives, and the length of the work. */
  private static String reason(Placed job) {
    List<String> reasons = new ArrayList<>();
    for (int i = 0; i < job.parts().size(); i++) {
      int part = i;
      List<String> waits =
          job.waits().stream()
              .filter(wait -> wait.part() == part)
              .map(wait -> held(job.job(), wait))
              .toList();
      String starts =
          (i == 0 ? "It" : "its sheet " + job.parts().get(i).sheet())
              + " starts at "
              + DayWords.clock(job.parts().get(i).from());
      if (!waits.isEmpty()) {
        reasons.add(starts + " because " + String.join(", and ", waits));
      } else if (i == 0) {
        reasons.add(starts + (isOnArrival(job) ? ", when the vehicle arrives" : ""));
      }
    }
    return "%s%s needs %s%smin of work."
        .formatted(
            String.join("; ", reasons),
            !job.waits().isEmpty() ? "; it" : isOnArrival(job) ? ", and" : " and",
            job.job().sheet().time().mean(),
            Phrases.NBSP);
  }

  private static boolean isOnArrival(Placed job) {
    return job.job()
        .job()
        .request()
        .arrives()
        .filter(it -> it.value().toSecondOfDay() / 60 == job.from())
        .isPresent();
  }

  private static String held(DayJob job, Wait wait) {
    String holders = String.join(" and ", wait.jobs());
    return switch (wait.resource().kind()) {
      case BAY -> "bay " + wait.resource().name() + " is in use by " + holders + " until then";
      case PERSON -> wait.resource().name() + " works on " + holders + " until then";
      case LOOK ->
          "%s looks at a hold point of %s when %s needs it"
              .formatted(wait.resource().name(), holders, job.number());
      case TOOL, STANDS ->
          "it needs the %s at %s, which is in use by %s until then"
              .formatted(wait.resource().name(), DayWords.clock(wait.at()), holders);
    };
  }
}
