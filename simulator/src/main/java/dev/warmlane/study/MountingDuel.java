package dev.warmlane.study;

import dev.warmlane.collector.CollectorForcing;
import dev.warmlane.collector.CollectorSurroundings;
import dev.warmlane.pool.PoolForcing;
import dev.warmlane.season.HeatBalance;
import dev.warmlane.season.Installation;
import dev.warmlane.season.Periods;
import dev.warmlane.season.SeasonForcing;
import dev.warmlane.season.SeasonLedger;
import dev.warmlane.season.SeasonSimulator;
import dev.warmlane.site.Roof;
import dev.warmlane.weather.WeatherYear;
import java.util.List;

/** Season heat of a flat array and of racks of the same area as one thing changes. Safe for many threads. */
final class MountingDuel {

    private final Installation template;
    private final WeatherYear weather;
    private final MountingOption flat;
    private final MountingOption.Racks racks;
    private final PoolForcing pool;
    private final CollectorForcing flatNow;
    private final CollectorForcing racksNow;

    MountingDuel(Installation template, WeatherYear weather, MountingOption.Flat flat, MountingOption.Racks racks) {
        this.template = template;
        this.weather = weather;
        this.flat = flat;
        this.racks = racks;
        this.pool = PoolForcing.of(template.pool(), template.cover(), template.bathers(), template.makeUp(), weather);
        this.flatNow = collector(mounted(flat), template.roof());
        this.racksNow = collector(mounted(racks), template.roof());
    }

    /**
     * Heat of both.
     *
     * @param flat of the flat array, kWh per m² a season
     * @param racks of the racks, kWh per m² a season
     */
    record Heats(double flat, double racks) {

        /** By how much the flat array is ahead, kWh per m² a season. */
        double margin() {
            return flat - racks;
        }
    }

    /** Heat of both where a variable has a value and everything else is as it is. */
    Heats at(TurningVariable variable, double value) {
        return switch (variable) {
            case ROOF_WIND_RATIO ->
                onRoof(template.roof().toBuilder().windSpeedRatio(value).build());
            case ROOF_ALBEDO -> onRoof(template.roof().toBuilder().albedo(value).build());
            case POOL_TEMPERATURE ->
                new Heats(
                        HeldPool.heatKwhM2(mounted(flat), flatNow, value),
                        HeldPool.heatKwhM2(mounted(racks), racksNow, value));
            case RACK_TILT -> {
                Installation tilted = mounted(racks.withTiltDeg(value));
                yield new Heats(season(mounted(flat), flatNow), season(tilted, collector(tilted, template.roof())));
            }
        };
    }

    /** Where the installation is. */
    double now(TurningVariable variable) {
        return switch (variable) {
            case ROOF_WIND_RATIO -> template.roof().windSpeedRatio();
            case ROOF_ALBEDO -> template.roof().albedo();
            case POOL_TEMPERATURE -> meanWaterC();
            case RACK_TILT -> racks.tiltDeg();
        };
    }

    /** The least value that can be built: racks at a fixed pitch must be steep enough not to overlap. */
    double lowest(TurningVariable variable) {
        if (variable == TurningVariable.RACK_TILT
                && racks.spacing() instanceof RowSpacing.FixedPitch fixed
                && fixed.pitchM() < racks.chordM()) {
            return Math.toDegrees(Math.acos(fixed.pitchM() / racks.chordM()));
        }
        return variable.from();
    }

    private Heats onRoof(Roof roof) {
        return new Heats(
                season(mounted(flat), collector(mounted(flat), roof)),
                season(mounted(racks), collector(mounted(racks), roof)));
    }

    private double meanWaterC() {
        SeasonLedger ledger = simulate(mounted(flat), flatNow);
        double sum = 0;
        for (int index = 0; index < ledger.hours(); index++) {
            sum += ledger.waterC(index);
        }
        return sum / ledger.hours();
    }

    private Installation mounted(MountingOption option) {
        RoofFit fit = RoofFit.ofArea(template, weather.site().latitudeDeg(), option, template.collectorAreaM2());
        return MountingStudy.mounted(template, option, fit);
    }

    private CollectorForcing collector(Installation mounted, Roof roof) {
        return CollectorForcing.of(
                new CollectorSurroundings(weather, roof, template.terrain()),
                mounted.arrays().get(0));
    }

    private double season(Installation mounted, CollectorForcing collector) {
        SeasonLedger ledger = simulate(mounted, collector);
        return HeatBalance.of(ledger, Periods.season(ledger)).deliveredKwh() / mounted.collectorAreaM2();
    }

    private SeasonLedger simulate(Installation mounted, CollectorForcing collector) {
        return SeasonSimulator.simulate(mounted, new SeasonForcing(pool, List.of(collector)));
    }
}
