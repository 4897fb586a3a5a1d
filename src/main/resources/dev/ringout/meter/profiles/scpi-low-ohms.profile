meter profile: ringout 1
# A low range, chosen once: no time is lost with changing ranges; more is over range.
about: joints alone: four wires, one range of 100 ohms
speaks: scpi
two-wire: CONF:RES 100
four-wire: CONF:FRES 100
setting: FUNC?
setting: RES:RANG?
query: READ?
errors: SYST:ERR?
fence: number
settle-ms: 100
noise-ohms: 0.001
noise-share: 0.0005
