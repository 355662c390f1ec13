/**
 * {@code scene} and {@code reader}: pictures with exact truth, and what the second reader is
 * trained on.
 *
 * <p>In: mixes, photos with truth. Out: pictures, training patches. May use: {@code app.output},
 * {@code app.trial}, {@code cli.option}, {@code cli.terminal}, {@code data}, {@code model}, {@code
 * pipeline}, {@code reader}, {@code scene}, {@code scene.draw}, {@code scene.legs}, {@code
 * scene.plan}, {@code scene.render}, {@code trial.truth}.
 */
package leadlight.cli.scene;
