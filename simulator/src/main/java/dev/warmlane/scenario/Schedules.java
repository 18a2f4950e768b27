package dev.warmlane.scenario;

import dev.warmlane.scenario.PlantKeys.What;
import dev.warmlane.scenario.WordKinds.Span;
import dev.warmlane.site.Schedule;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The rules of all sections {@code [[schedule]]}, sorted by what they are for. */
final class Schedules {

    private final Map<What, List<Section>> rules = new EnumMap<>(What.class);

    private final List<Section> all;

    Schedules(List<Document.Group> groups) {
        all = groups.stream().map(Document.Group::main).toList();
        for (Document.Group group : groups) {
            Section rule = group.main();
            What what = rule.get(PlantKeys.WHAT);
            if (!rule.sound(PlantKeys.WHAT) || !rule.has(PlantKeys.WHAT)) {
                continue;
            }
            if (!what.gradual() && rule.get(PlantKeys.SHARE) % 1 != 0) {
                rule.error(PlantKeys.SHARE, "allowed for \"open\", \"pumping\" and \"heating\": 1 or 0");
            }
            rules.computeIfAbsent(what, w -> new ArrayList<>()).add(rule);
        }
    }

    /** Every rule in the order of the file. */
    List<Section> all() {
        return all;
    }

    /** Whether there is a rule for something. */
    boolean has(What what) {
        return rules.containsKey(what);
    }

    /** Reports all rules for something that has none. */
    void refuse(What what, String why) {
        rules.getOrDefault(what, List.of()).forEach(rule -> rule.refuse(why, PlantKeys.WHAT));
    }

    /** A schedule of rules alone. */
    Schedule of(What what) {
        return with(Schedule.builder(0), what);
    }

    /** A schedule that starts from a span of hours in its own section; where there are rules the span is not assumed. */
    Schedule of(What what, Section owner, Key<Span> daily) {
        Schedule.Builder schedule = Schedule.builder(0);
        if (owner.has(daily) || !has(what)) {
            Span hours = owner.get(daily);
            schedule.daily(hours.from(), hours.to(), 1);
        }
        return with(schedule, what);
    }

    private Schedule with(Schedule.Builder schedule, What what) {
        for (Section rule : rules.getOrDefault(what, List.of())) {
            Span months = rule.get(PlantKeys.MONTHS);
            Span hours = rule.get(PlantKeys.HOURS);
            schedule.monthly(months.from(), months.to(), hours.from(), hours.to(), rule.get(PlantKeys.SHARE));
        }
        return schedule.build();
    }
}
