package dev.warmlane.report;

import dev.warmlane.heater.CondensingBoiler;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.PoolSetting;
import dev.warmlane.pool.PoolSkyline;
import dev.warmlane.scenario.Assumption;
import dev.warmlane.season.Installation;
import dev.warmlane.site.HourOfYear;
import dev.warmlane.units.Measure;
import dev.warmlane.wind.PoolShelter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The few things that a season rests on most, in words of an owner, whether they were given or assumed. Their order is
 * our own, after what the sensitivity study finds for the project's own scenarios: wind, cover, sun, collectors, heater.
 */
final class RestsOn {

    /** More is not read. */
    private static final int MOST = 5;

    private final Numbers numbers;
    private final Installation built;
    private final List<Assumption> assumed;
    private final List<String> points = new ArrayList<>();

    private RestsOn(Subject subject) {
        this.numbers = subject.numbers();
        this.built = subject.installation();
        this.assumed = subject.assumed();
    }

    /** A section for the owner. */
    static Section of(Subject subject) {
        RestsOn text = new RestsOn(subject);
        text.add();
        int more = subject.assumed().size();
        return Section.of("What this rests on", Place.ANSWER)
                .points(text.points.subList(0, Math.min(MOST, text.points.size())))
                .words(
                        more == 0
                                ? ""
                                : "In all, " + more + (more == 1 ? " value was" : " values were")
                                        + " assumed because nothing else was given. The technical part lists them, each"
                                        + " with where it comes from.");
    }

    private void add() {
        built.pool().setting().match(this::outdoor, this::indoor);
        point(
                built.cover().map(this::cover).orElse("No cover lies on the water at any time"),
                built.cover().isPresent() && isAssumed("cover", "drawn"));
        built.pool().setting().outdoor().ifPresent(this::sun);
        built.arrays().stream()
                .findFirst()
                .ifPresent(array -> point(
                        array.model()
                                .match(
                                        absorber -> "The collectors stay clean and take in "
                                                + numbers.show(Measure.SHARE, absorber.absorptance())
                                                + " of the light that falls straight on them",
                                        certificate -> "The collectors give what their test certificate says",
                                        curve -> "The collectors give what was measured of them"),
                        isAssumed("collectors 1.absorber", "absorptance")));
        built.heater()
                .ifPresent(heater -> point(
                        heater.match(
                                boiler -> makes(boiler.efficiency()),
                                condensing -> makes(condensing.efficiency()) + " while the pool is at "
                                        + numbers.show(Measure.TEMPERATURE, CondensingBoiler.LOW_RETURN_C),
                                electric -> "All electricity of the heater becomes heat of the pool",
                                pump -> "The heat pump gives "
                                        + numbers.show(pump.rating().warm().cop(), 1)
                                        + " times its electricity as heat in air of "
                                        + numbers.show(
                                                Measure.TEMPERATURE,
                                                pump.rating().warm().airC()),
                                network -> "District heat is paid for as it is handed over"),
                        isAssumed("heater", "efficiency")));
        point(
                built.bathers().whenFull() > 0
                        ? "At most " + numbers.show(built.bathers().whenFull(), 0)
                                + " people are in the water at a time"
                        : "What bathers add and take is not counted",
                isAssumed("pool", "bathers"));
    }

    private String makes(double efficiency) {
        return "The heater makes " + numbers.show(Measure.SHARE, efficiency) + " of its fuel into heat for the pool";
    }

    private boolean outdoor(PoolSetting.Outdoor outdoor) {
        double factor = outdoor.windFactor();
        String lies = factor <= (PoolShelter.SHELTERED.factor() + PoolShelter.SUBURBAN.factor()) / 2
                ? "well sheltered from the wind"
                : factor <= (PoolShelter.SUBURBAN.factor() + PoolShelter.EXPOSED.factor()) / 2
                        ? "among houses and trees"
                        : "open to the wind";
        return point(
                "The pool lies " + lies + ": " + numbers.show(Measure.SHARE, factor)
                        + " of the weather station's wind reaches the water",
                isAssumed("pool", "wind_shelter"));
    }

    private boolean indoor(PoolSetting.Indoor indoor) {
        return point(
                "The hall is at " + numbers.show(Measure.TEMPERATURE, indoor.hallTemperatureC()) + " and "
                        + numbers.show(Measure.SHARE, indoor.hallHumidity()) + " humidity all the time",
                isAssumed("pool", "hall_temperature") || isAssumed("pool", "hall_humidity"));
    }

    private String cover(Cover cover) {
        int open = built.season().days() * HourOfYear.HOURS / HourOfYear.DAYS;
        int first = HourOfYear.startOf(built.season().first());
        double hours = IntStream.range(0, open)
                        .mapToDouble(i -> cover.drawn().at((first + i) % HourOfYear.HOURS))
                        .average()
                        .orElse(0)
                * 24;
        return "The " + cover.name() + " lies on the water " + numbers.show(hours, hours < 9.95 ? 1 : 0)
                + " hours a day, every day";
    }

    private void sun(PoolSetting.Outdoor outdoor) {
        point(
                outdoor.shadedShare() == 0
                        ? outdoor.skyline().equals(PoolSkyline.OPEN)
                                ? "Nothing shades the pool"
                                : "Nothing shades the pool but what is described around it"
                        : "Buildings and trees keep " + numbers.show(Measure.SHARE, outdoor.shadedShare())
                                + " of the sun from the pool",
                isAssumed("pool", "shaded_share"));
    }

    private boolean point(String words, boolean isAssumed) {
        return points.add(words + (isAssumed ? " (assumed)" : ""));
    }

    private boolean isAssumed(String section, String key) {
        return assumed.stream()
                .anyMatch(one -> one.section().equals(section) && one.key().equals(key));
    }
}
