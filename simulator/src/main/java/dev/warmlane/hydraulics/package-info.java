/**
 * What it takes to push water through pipes, mats and banks, and how it divides among them: pure functions of geometry and
 * flow.
 *
 * <p>{@link dev.warmlane.hydraulics.Friction} is the wall, {@link dev.warmlane.hydraulics.Pipe} a run of pipe with its
 * bends, {@link dev.warmlane.hydraulics.Manifold} several ways between two headers, such as the panels of a bank or the
 * banks of a row, {@link dev.warmlane.hydraulics.PumpCurve} the pump, and {@link dev.warmlane.hydraulics.PipeLoss} the heat
 * that a pipe loses. A way through several of them is a {@link dev.warmlane.hydraulics.Way}. Pressures are in Pa, flows in
 * kg/s; steady flow of a liquid that keeps its temperature.
 */
@NullMarked
package dev.warmlane.hydraulics;

import org.jspecify.annotations.NullMarked;
