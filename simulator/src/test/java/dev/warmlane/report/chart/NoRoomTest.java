package dev.warmlane.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.warmlane.SampleForecasts;
import dev.warmlane.collector.Mounting;
import dev.warmlane.season.Installation;
import dev.warmlane.study.MountingOption;
import dev.warmlane.study.MountingStudy;
import dev.warmlane.study.Runs;
import dev.warmlane.study.SharedForcing;
import dev.warmlane.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a roof has no room for is not drawn as if it had. */
class NoRoomTest {

    /** 315 m² lie flat on a roof of which 336 m² are usable, and do not stand in rows with ways between them. */
    @Test
    void racksWithoutRoomHaveNoBarAndSaySo() {
        Installation built = SampleForecasts.MUNICIPAL.installation();
        Installation large = built.toBuilder()
                .arrays(List.of(built.arrays().get(0).withAreaM2(315)))
                .build();
        MountingStudy study = MountingStudy.of(
                large,
                new SharedForcing(SampleForecasts.MUNICIPAL.weather()),
                List.of(
                        new MountingOption.Flat("flat", Mounting.FlatOnRoof.USUAL),
                        MountingOption.racks("racks", 30, 180)),
                Runs.onAllCores());
        RowPlot plot = (RowPlot) MountingCharts.heat("heat", study, UnitSystem.METRIC)
                .orElseThrow()
                .plot();

        assertThat(plot.rows()).extracting(Plot.Tick::label).containsExactly("flat", "racks" + MountingCharts.NO_ROOM);
        // row by row, of each the same area and then the most that fits
        assertThat(plot.bars()).extracting(bar -> bar.place().getWidth() > 0).containsExactly(true, true, false, true);
    }
}
