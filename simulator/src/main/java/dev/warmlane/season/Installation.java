package dev.warmlane.season;

import dev.warmlane.circuit.Control;
import dev.warmlane.circuit.Hydraulics;
import dev.warmlane.circuit.Pipes;
import dev.warmlane.collector.CollectorArray;
import dev.warmlane.collector.CollectorPhysics;
import dev.warmlane.heater.Bill;
import dev.warmlane.heater.Heater;
import dev.warmlane.pool.Bathers;
import dev.warmlane.pool.Cover;
import dev.warmlane.pool.Departure;
import dev.warmlane.pool.MainsWater;
import dev.warmlane.pool.MakeUp;
import dev.warmlane.pool.OpeningSeason;
import dev.warmlane.pool.Pool;
import dev.warmlane.pool.StartWater;
import dev.warmlane.roof.RoofPlan;
import dev.warmlane.site.Roof;
import dev.warmlane.site.Terrain;
import dev.warmlane.units.Checks;
import dev.warmlane.weather.HourlyWeather;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is built, all of it: pool, cover, roof, collectors, heater, control and season. Immutable. */
public final class Installation {

    /** The most arrays, each of which takes some 2 MB; own choice. */
    public static final int MOST_ARRAYS = 20;

    private final String name;
    private final Terrain terrain;
    private final @Nullable Roof roof;
    private final @Nullable RoofPlan plan;
    private final Pool pool;
    private final @Nullable Cover cover;
    private final Bathers bathers;
    private final MakeUp makeUp;
    private final List<CollectorArray> arrays;
    private final CollectorPhysics collectorPhysics;
    private final Pipes pipes;
    private final @Nullable Hydraulics hydraulics;
    private final @Nullable Heater heater;
    private final @Nullable Bill lastBill;
    private final Control control;
    private final OpeningSeason season;
    private final StartWater startWater;
    private final Comfort comfort;
    private final @Nullable Prices prices;
    private final Offer offer;
    private final @Nullable FittedDoubt fitted;

    private Installation(Builder b) {
        this.name = b.name;
        this.terrain = b.terrain;
        this.roof = b.roof;
        this.plan = b.plan;
        this.pool = b.pool;
        this.cover = b.cover;
        this.bathers = b.bathers;
        this.makeUp = b.makeUp;
        this.arrays = List.copyOf(b.arrays);
        Checks.within("number of collector arrays", arrays.size(), 0, MOST_ARRAYS, "");
        this.collectorPhysics = b.collectorPhysics;
        this.pipes = b.pipes;
        this.hydraulics = b.hydraulics;
        this.heater = b.heater;
        this.lastBill = b.lastBill;
        this.control = b.control;
        this.season = b.season;
        this.startWater = b.startWater;
        this.comfort = b.comfort;
        this.prices = b.prices;
        this.offer = b.offer;
        this.fitted = b.fitted;
        if (roof == null && !arrays.isEmpty()) {
            throw new IllegalArgumentException("\"" + name
                    + "\" has collectors and no roof: start it with Installation.builder(name, pool, roof)");
        }
        bathers.checkRoom(pool.areaM2());
    }

    /** Starts an installation from what every one has: a pool, and the roof that collectors go on. */
    public static Builder builder(String name, Pool pool, Roof roof) {
        return new Builder(name, pool, roof);
    }

    /** Starts a pool alone, to which no collectors can be added until it has a roof. */
    public static Builder builder(String name, Pool pool) {
        return new Builder(name, pool, null);
    }

    /** This installation as a builder, to change one thing. */
    public Builder toBuilder() {
        Builder b = new Builder(name, pool, roof);
        b.terrain = terrain;
        b.plan = plan;
        b.cover = cover;
        b.bathers = bathers;
        b.makeUp = makeUp;
        b.arrays = arrays;
        b.collectorPhysics = collectorPhysics;
        b.pipes = pipes;
        b.hydraulics = hydraulics;
        b.heater = heater;
        b.lastBill = lastBill;
        b.control = control;
        b.season = season;
        b.startWater = startWater;
        b.comfort = comfort;
        b.prices = prices;
        b.offer = offer;
        b.fitted = fitted;
        return b;
    }

    /** The same installation without its collectors. */
    public Installation withoutCollectors() {
        return toBuilder().arrays(List.of()).build();
    }

    /** What the designer calls it. */
    public String name() {
        return name;
    }

    /** The ground around the roof. */
    public Terrain terrain() {
        return terrain;
    }

    /**
     * The roof the collectors are on.
     *
     * @throws IllegalStateException if it was built as a pool alone; reports and studies of collectors need one
     */
    public Roof roof() {
        if (roof == null) {
            throw new IllegalStateException(
                    "\"" + name + "\" is a pool alone, without a roof: reports and studies of collectors need one");
        }
        return roof;
    }

    /** The same roof as it is drawn, with the panels to be laid on it; nothing where it is known by its sides alone. */
    public Optional<RoofPlan> plan() {
        return Optional.ofNullable(plan);
    }

    /** The basin. */
    public Pool pool() {
        return pool;
    }

    /** The cover, where there is one. */
    public Optional<Cover> cover() {
        return Optional.ofNullable(cover);
    }

    /** The people in the water. */
    public Bathers bathers() {
        return bathers;
    }

    /** Water that is replaced. */
    public MakeUp makeUp() {
        return makeUp;
    }

    /** The collectors; none in a pool without. */
    public List<CollectorArray> arrays() {
        return arrays;
    }

    /** Collector area of all arrays, m². */
    public double collectorAreaM2() {
        return arrays.stream().mapToDouble(CollectorArray::areaM2).sum();
    }

    /** The published models the collector side stands on. */
    public CollectorPhysics collectorPhysics() {
        return collectorPhysics;
    }

    /** Pipes and pump of the collector circuits, shared among the arrays by area. */
    public Pipes pipes() {
        return pipes;
    }

    /**
     * What the water of that circuit has to pass, where it is told. It changes nothing by itself: {@code study.WaterCircuit}
     * makes pump power, heat loss and the division of the flow of it.
     */
    public Optional<Hydraulics> hydraulics() {
        return Optional.ofNullable(hydraulics);
    }

    /** Whatever heats the pool beside the collectors, where there is anything. */
    public Optional<Heater> heater() {
        return Optional.ofNullable(heater);
    }

    /** What was bought for the heater in a season before there were collectors, where it is known. */
    public Optional<Bill> lastBill() {
        return Optional.ofNullable(lastBill);
    }

    /** Control of the collector circuits. */
    public Control control() {
        return control;
    }

    /** When the pool is open. */
    public OpeningSeason season() {
        return season;
    }

    /** How warm the pool is at opening. */
    public StartWater startWater() {
        return startWater;
    }

    /** Between which temperatures people like the water. */
    public Comfort comfort() {
        return comfort;
    }

    /** The temperature from which people find the pool warm enough, °C. */
    public double comfortC() {
        return comfort.warmEnoughC();
    }

    /** The temperature above which people find the pool too warm, °C. */
    public double comfortMaximumC() {
        return comfort.tooWarmC();
    }

    /** What energy and collectors cost, where it is known. */
    public Optional<Prices> prices() {
        return Optional.ofNullable(prices);
    }

    /** What is paid beside the prices, how later years are counted, and the cover that the collectors are compared with. */
    public Offer offer() {
        return offer;
    }

    /** How far wind, sun and sky at the pool are known, where they were fitted to a log of its water. */
    public Optional<FittedDoubt> fitted() {
        return Optional.ofNullable(fitted);
    }

    /** By how much wind, sun and sky at the water are others in each hour than the pool's description makes of the weather. */
    public Departure departure(HourlyWeather weather) {
        return fitted == null || pool.setting().outdoor().isEmpty()
                ? Departure.NONE
                : new FittedDeparture(WindAndSun.of(this), fitted, weather);
    }

    /**
     * Gathers an installation. Defaults: suburban terrain, no cover, no bathers, make-up for evaporation alone at mains
     * temperature, no collectors, no pipe losses, no heater, usual differences with a solar limit of 30 °C, whole year,
     * 30 days standing filled, comfort from 26 to 30 °C.
     */
    public static final class Builder {
        private final String name;
        private Pool pool;
        private @Nullable Roof roof;
        private @Nullable RoofPlan plan;
        private Terrain terrain = Terrain.SUBURBAN;
        private @Nullable Cover cover;
        private Bathers bathers = Bathers.NONE;
        private MakeUp makeUp = new MakeUp(0, new MainsWater.FromAir());
        private List<CollectorArray> arrays = List.of();
        private CollectorPhysics collectorPhysics = CollectorPhysics.USUAL;
        private Pipes pipes = Pipes.NONE;
        private @Nullable Hydraulics hydraulics;
        private @Nullable Heater heater;
        private @Nullable Bill lastBill;
        private Control control = Control.withLimit(Control.USUAL_LIMIT_C);
        private OpeningSeason season = OpeningSeason.wholeYear();
        private StartWater startWater = StartWater.StandingFilled.USUAL;
        private Comfort comfort = Comfort.USUAL;
        private @Nullable Prices prices;
        private Offer offer = Offer.USUAL;
        private @Nullable FittedDoubt fitted;

        private Builder(String name, Pool pool, @Nullable Roof roof) {
            this.name = name;
            this.pool = pool;
            this.roof = roof;
        }

        /** See {@link Installation#terrain}. */
        public Builder terrain(Terrain value) {
            terrain = value;
            return this;
        }

        /** See {@link Installation#pool}. */
        public Builder pool(Pool value) {
            pool = value;
            return this;
        }

        /** See {@link Installation#roof}. */
        public Builder roof(Roof value) {
            roof = value;
            return this;
        }

        /** See {@link Installation#cover}; null for none. */
        public Builder cover(@Nullable Cover value) {
            cover = value;
            return this;
        }

        /** See {@link Installation#bathers}. */
        public Builder bathers(Bathers value) {
            bathers = value;
            return this;
        }

        /** See {@link Installation#makeUp}. */
        public Builder makeUp(MakeUp value) {
            makeUp = value;
            return this;
        }

        /** See {@link Installation#arrays}. */
        public Builder arrays(List<CollectorArray> value) {
            arrays = value;
            return this;
        }

        /** See {@link Installation#arrays}. */
        public Builder arrays(CollectorArray... value) {
            arrays = List.of(value);
            return this;
        }

        /** See {@link Installation#plan}; null where the roof is not drawn. */
        public Builder plan(@Nullable RoofPlan value) {
            plan = value;
            return this;
        }

        /** See {@link Installation#collectorPhysics}. */
        public Builder collectorPhysics(CollectorPhysics value) {
            collectorPhysics = value;
            return this;
        }

        /** See {@link Installation#pipes}. */
        public Builder pipes(Pipes value) {
            pipes = value;
            return this;
        }

        /** See {@link Installation#hydraulics}; null where not told. */
        public Builder hydraulics(@Nullable Hydraulics value) {
            hydraulics = value;
            return this;
        }

        /** See {@link Installation#heater}; null for none. */
        public Builder heater(@Nullable Heater value) {
            heater = value;
            return this;
        }

        /** See {@link Installation#lastBill}; null where not known. */
        public Builder lastBill(@Nullable Bill value) {
            lastBill = value;
            return this;
        }

        /** See {@link Installation#control}. */
        public Builder control(Control value) {
            control = value;
            return this;
        }

        /** See {@link Installation#season}. */
        public Builder season(OpeningSeason value) {
            season = value;
            return this;
        }

        /** See {@link Installation#startWater}. */
        public Builder startWater(StartWater value) {
            startWater = value;
            return this;
        }

        /** See {@link Installation#comfort}. */
        public Builder comfort(Comfort value) {
            comfort = value;
            return this;
        }

        /** See {@link Installation#prices}; null where not known. */
        public Builder prices(@Nullable Prices value) {
            prices = value;
            return this;
        }

        /** See {@link Installation#offer}. */
        public Builder offer(Offer value) {
            offer = value;
            return this;
        }

        /** See {@link Installation#fitted}; null where nothing was fitted. */
        public Builder fitted(@Nullable FittedDoubt value) {
            fitted = value;
            return this;
        }

        /**
         * The finished installation.
         *
         * @throws IllegalArgumentException if a value is out of range, or there are more bathers than can stand in the pool
         */
        public Installation build() {
            return new Installation(this);
        }
    }
}
