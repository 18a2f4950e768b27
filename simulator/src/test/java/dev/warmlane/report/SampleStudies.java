package dev.warmlane.report;

import dev.warmlane.collector.Mounting;
import dev.warmlane.scenario.ReportSettings;
import dev.warmlane.season.Installation;
import dev.warmlane.season.SeasonForecast;
import dev.warmlane.study.AreaRange;
import dev.warmlane.study.AreaStudy;
import dev.warmlane.study.DatesStudy;
import dev.warmlane.study.ExposureStudy;
import dev.warmlane.study.MountingBands;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SensitivityStudy;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.study.TurningPoint;
import dev.warmlane.study.TurningPoints;
import dev.warmlane.study.TurningVariable;
import dev.warmlane.study.UsualMountings;
import dev.warmlane.study.YearsStudy;
import dev.warmlane.units.UnitSystem;
import dev.warmlane.weather.RealYears;
import dev.warmlane.weather.TypicalYear;
import dev.warmlane.weather.WeatherYear;
import dev.warmlane.weather.WeatherYears;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** Studies of the project's own scenarios, and small ones, for their charts and pages. */
public final class SampleStudies {

    /** Heater, prices, one flat array; metric. */
    public static final SampleStudies MUNICIPAL = usual(SampleReports.MUNICIPAL);

    /** US units. */
    public static final SampleStudies CLUB = usual(SampleReports.CLUB);

    /** No heater, over New Year. */
    public static final SampleStudies SOUTHERN = usual(SampleReports.SOUTHERN);

    /** Collectors that a certificate describes, on a pitched roof; a pool in a hall. */
    public static final SampleStudies INDOOR = usual(SampleReports.INDOOR);

    /** A heat pump; for those that want all examples, as {@link #DRAWN}. */
    public static final SampleStudies HOTEL = usual(SampleReports.HOTEL);

    /** On a drawn roof, of which a layout makes the areas. */
    public static final SampleStudies DRAWN = usual(SampleReports.DRAWN);

    /** One mounting and one area. */
    public static final SampleStudies SINGLE = new SampleStudies(
            SampleReports.MUNICIPAL,
            List.of(new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL)),
            new AreaRange(210, 210, 1));

    private final Subject described;
    private final Supplier<MountingStudy> mountings;
    private final Supplier<AreaStudy> areas;
    private final Supplier<ExposureStudy> exposure;
    private final Supplier<SensitivityStudy> sensitivity;
    private final Supplier<DatesStudy> dates;
    private List<Report> made = List.of();

    private SampleStudies(Subject described, List<MountingOption> options, AreaRange range) {
        Installation built = described.forecast().installation();
        SharedForcing forcing = described.bands().forcing();
        this.described = described;
        this.mountings = once(() -> MountingStudy.of(built, forcing, options, Runs.onAllCores()));
        this.areas = once(() -> AreaStudy.of(built, range, forcing, Runs.onAllCores()));
        this.exposure = once(() -> ExposureStudy.of(built, forcing, Runs.onAllCores()));
        this.sensitivity = once(() -> SensitivityStudy.of(built, forcing, Runs.onAllCores()));
        this.dates = once(() -> DatesStudy.of(built, DatesStudy.USUAL_WEEKS, forcing, Runs.onAllCores()));
    }

    private SampleStudies(SampleStudies of, Subject described) {
        this.described = described;
        this.mountings = of.mountings;
        this.areas = of.areas;
        this.exposure = of.exposure;
        this.sensitivity = of.sensitivity;
        this.dates = of.dates;
    }

    /** Computes when it is first asked. */
    private static <T> Supplier<T> once(Supplier<T> study) {
        AtomicReference<T> done = new AtomicReference<>();
        return () -> {
            synchronized (done) {
                if (done.get() == null) {
                    done.set(study.get());
                }
                return done.get();
            }
        };
    }

    /** The same for a reader who wants it otherwise. */
    public SampleStudies in(ReportSettings settings) {
        return new SampleStudies(this, described.in(settings));
    }

    private static SampleStudies usual(Subject described) {
        Installation built = described.forecast().installation();
        return new SampleStudies(
                described,
                UsualMountings.of(built, described.forecast().weather().site()),
                AreaRange.around(built.collectorAreaM2()));
    }

    /** All of them. */
    public static Map<String, SampleStudies> all() {
        Map<String, SampleStudies> all = new LinkedHashMap<>();
        all.put("municipal", MUNICIPAL);
        all.put("club", CLUB);
        all.put("southern", SOUTHERN);
        all.put("indoor", INDOOR);
        all.put("one of each", SINGLE);
        return all;
    }

    /** A pool, an array and a mounting that bear a name, which may be anything. */
    public static SampleStudies named(String name) {
        Installation built = SampleReports.MUNICIPAL.forecast().installation();
        Installation renamed = Installation.builder(name, built.pool(), built.roof())
                .arrays(built.arrays())
                .season(built.season())
                .build();
        SeasonForecast forecast =
                SeasonForecast.of(renamed, SampleReports.MUNICIPAL.forecast().weather());
        return new SampleStudies(
                Subject.of(forecast, new ReportSettings(name, UnitSystem.METRIC)),
                List.of(
                        new MountingOption.Flat(name, Mounting.FlatOnRoof.USUAL),
                        new MountingOption.Flat(name + " too", Mounting.FlatOnRoof.USUAL)),
                new AreaRange(100, 200, 2));
    }

    /** The forecast of what they started from. */
    public Subject described() {
        return described;
    }

    /** The units of their numbers. */
    public UnitSystem units() {
        return described.units();
    }

    /** The comparison. */
    public MountingStudy mountings() {
        return mountings.get();
    }

    /** How far the mountings are to be trusted. */
    MountingBands bands() {
        return new MountingBands(described.bands());
    }

    /** The areas. */
    public AreaStudy areas() {
        return areas.get();
    }

    /** Pool and roof in the wind. */
    public ExposureStudy exposure() {
        return exposure.get();
    }

    /** One thing at a time. */
    public SensitivityStudy sensitivity() {
        return sensitivity.get();
    }

    /** Its reports, made and drawn once for all tests. */
    private synchronized List<Report> made() {
        if (made.isEmpty()) {
            made = List.of(
                    makeMountingReport(),
                    AreaReport.of(areas(), described),
                    SensitivityReport.of(exposure(), sensitivity(), described),
                    makeYearsReport());
            // the bands stay known; what they stood on would fill the room of all tests together
            described.bands().forcing().clear();
        }
        return made;
    }

    /** The report of the mountings, with invented turning points where there is more than one. */
    public Report mountingReport() {
        return made().get(0);
    }

    private Report makeMountingReport() {
        List<String> names =
                mountings().compared().stream().map(one -> one.option().name()).toList();
        Optional<TurningPoints> turning = names.size() < 2
                ? Optional.empty()
                : Optional.of(new TurningPoints(
                        names.get(0),
                        names.get(1),
                        List.of(new TurningPoint(
                                TurningVariable.POOL_TEMPERATURE,
                                10,
                                40,
                                24,
                                new TurningPoint.Crossings(
                                        List.of(new TurningPoint.Crossing(20, 400, names.get(1), names.get(0))))))));
        return MountingReport.of(
                mountings(),
                turning,
                turning.map(found -> InventedMap.of(true)),
                turning.map(found -> InventedRoofMap.of(true)),
                described);
    }

    /** The report of the areas. */
    public Report areaReport() {
        return made().get(1);
    }

    /** The report of what the forecast depends on. */
    public Report sensitivityReport() {
        return made().get(2);
    }

    /** The report of three invented years, the first of them as described. */
    public Report yearsReport() {
        return made().get(3);
    }

    private Report makeYearsReport() {
        WeatherYear weather = described.forecast().weather();
        WeatherYears years = WeatherYears.of(List.of(
                RealYears.like(weather, 2003, 1, 0.9),
                RealYears.like(weather, 2001, 0, 1),
                RealYears.like(weather, 2002, -1, 0.95)));
        YearsStudy study = YearsStudy.of(described.forecast().installation(), years);
        return YearsReport.of(study, years, Optional.of(TypicalYear.of(years)), described);
    }

    /** All of them, save that of the dates. */
    public List<Report> reports() {
        return made();
    }

    /** The report of other dates of opening and closing. */
    public Report datesReport() {
        return DatesReport.of(dates.get(), described);
    }
}
