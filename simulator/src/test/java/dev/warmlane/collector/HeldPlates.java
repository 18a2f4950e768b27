package dev.warmlane.collector;

import java.util.function.Function;

/** For tests of what reaches a collector while water runs: plates that stay at 30 °C when it does not. */
final class HeldPlates implements HourlyHeat {

    static final Function<Exposure, HourlyHeat> AT_30 = exposure -> new HeldPlates();

    private HeldPlates() {}

    @Override
    public double stagnationC(int hour) {
        return 30;
    }

    @Override
    public double heatWm2(int hour, double inletC) {
        return 0;
    }
}
