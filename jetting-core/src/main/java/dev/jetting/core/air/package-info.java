/**
 * Air: its density and humidity, the standard atmosphere, and the correction of measured power to
 * standard air.
 */
package dev.jetting.core.air;
