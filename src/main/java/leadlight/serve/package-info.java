/**
 * Pages served to a browser of this computer alone: the loopback address, a port that the system
 * chooses, a token in the address, Host and Origin checked.
 *
 * <p>In: what answers a request. Out: an address. May use: {@code model}, the JDK's own server.
 */
package leadlight.serve;
