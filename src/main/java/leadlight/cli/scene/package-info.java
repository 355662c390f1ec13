/**
 * {@code scene} and {@code reader}: pictures with exact truth, and what the second reader is
 * trained on.
 *
 * <p>In: mixes, photos with truth. Out: pictures, training patches. May use: {@code cli.option},
 * {@code cli.terminal}, {@code cli.trial}, {@code data}, {@code grade.limits}, {@code model},
 * {@code model.joint}, {@code model.picture}, {@code model.result}, {@code model.row}, {@code
 * photo}, {@code pipeline}, {@code reader}, {@code rowcheck}, {@code scene}, {@code scene.draw},
 * {@code scene.legs}, {@code scene.plan}, {@code scene.render}, {@code trial.list}, {@code
 * trial.outcome}, {@code trial.truth}, {@code vision}.
 */
package leadlight.cli.scene;
