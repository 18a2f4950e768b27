/**
 * The season: what is built, the hourly loop, the ledger of every flow, and its summaries.
 *
 * <p>An {@link dev.warmlane.season.Installation} is everything that is built, with what people find warm enough
 * ({@link dev.warmlane.season.Comfort}) and what energy costs ({@link dev.warmlane.season.Prices}).
 * {@link dev.warmlane.season.SeasonForcing} is what the weather does to it whatever the pool's temperature;
 * {@link dev.warmlane.season.SeasonSimulator} steps through the open season and hands out a
 * {@link dev.warmlane.season.SeasonLedger}, from which all summaries are sums. A
 * {@link dev.warmlane.season.SeasonForecast} is that twice, with collectors and without, because what the collectors
 * displace is a difference of the two.
 *
 * <p>Within an hour forcing stands still, and the hour is cut where something switches: set point, solar limit, start and
 * stop of a pump. Each piece is one step by the implicit midpoint, whose length lands on the switching temperature. The
 * ledger closes in every hour to 1e-9 of its flows, and the water follows one-minute steps of the same equations within
 * 0.02 K (0.03 K in pools shallower than 1.2 m); both are tested. Nothing is allocated in the loop.
 *
 * <p>Start reading at {@code SeasonSimulator}.
 */
@NullMarked
package dev.warmlane.season;

import org.jspecify.annotations.NullMarked;
