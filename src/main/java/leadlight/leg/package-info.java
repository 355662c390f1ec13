/**
 * Anchor legs in plated holes: comes in an upright photo and which legs of which part it shows;
 * goes out where each lies, how far solder meets it and covers its land, and the verdict. Uses
 * model, data, vision, the sizes of connector and the limits of grade.
 */
package leadlight.leg;
