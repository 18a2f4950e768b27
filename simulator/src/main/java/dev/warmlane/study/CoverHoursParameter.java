package dev.warmlane.study;

import dev.warmlane.pool.Cover;
import dev.warmlane.season.Installation;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.site.Schedule;
import dev.warmlane.units.Dimension;
import dev.warmlane.units.Units;
import java.util.List;

/** Hours a day that the cover lies on the water in the open season: drawn an hour later and taken off an hour earlier,
 * and the other way round. */
record CoverHoursParameter() implements Parameter {

    private static final int HOURS = 24;

    @Override
    public String name() {
        return "cover, hours a day";
    }

    @Override
    public String why() {
        return "drawn an hour later and taken off an hour earlier, and the other way round; common practice, no source";
    }

    @Override
    public Variation in(Installation installation) {
        return installation
                .cover()
                .map(cover -> of(installation, cover))
                .orElseGet(() -> new Variation.NotHere("there is no cover"));
    }

    private static Variation of(Installation installation, Cover cover) {
        return new Variation.Range(
                hoursADay(installation, cover.drawn()),
                with(installation, cover, changed(cover.drawn(), false)),
                with(installation, cover, changed(cover.drawn(), true)));
    }

    private static Variation.End with(Installation installation, Cover cover, Schedule drawn) {
        return new Variation.End(
                hoursADay(installation, drawn),
                installation.toBuilder().cover(cover.withDrawn(drawn)).build());
    }

    private static Setting hoursADay(Installation installation, Schedule drawn) {
        int first = installation.season().firstHour();
        int hours = installation.season().hours();
        double sum = 0;
        for (int index = 0; index < hours; index++) {
            sum += drawn.at((first + index) % HourOfYear.HOURS);
        }
        return new Setting.Numbers(List.of(sum / hours * HOURS * Units.HOUR), Dimension.DURATION);
    }

    /**
     * Each hour takes the most, or the least, of itself and its two neighbours. Schedules go by month and hour of the
     * day, so that a day of each month shows all of it.
     */
    private static Schedule changed(Schedule drawn, boolean more) {
        Schedule.Builder changed = Schedule.builder(0);
        for (int month = 1; month <= 12; month++) {
            int day = HourOfYear.firstHourOf(month);
            for (int hour = 0; hour < HOURS; hour++) {
                double before = drawn.at(day + (hour + HOURS - 1) % HOURS);
                double now = drawn.at(day + hour);
                double after = drawn.at(day + (hour + 1) % HOURS);
                double share = more ? Math.max(now, Math.max(before, after)) : Math.min(now, Math.min(before, after));
                if (share > 0) {
                    changed.monthly(month, month, hour, hour + 1, share);
                }
            }
        }
        return changed.build();
    }
}
