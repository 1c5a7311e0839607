/**
 * Advance widths of Source Sans 3 (SIL Open Font Licence 1.1), read once from the font files with opentype.js.
 * Two base-36 digits a character, in hundredths of an em, in the order of `characters`.
 */
export const characters =
  ' !"#$%&\'()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_`abcdefghijklmnopqrstuvwxyz{|}~\u00a0¡¢£¤¥¦§¨©ª«¬®¯°±²³´µ¶·¸¹º»¼½¾¿ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖ×ØÙÚÛÜÝÞßàáâãäåæçèéêëìíîïðñòóôõö÷øùúûüýþÿ\u2009\u202f–—‘’“”…−≤≥≈→Δμντωηρ';
export const regular =
  '0k0t171e1e2a1p0p0u0u161e0p0v0p0z1e1e1e1e1e1e1e1e1e1e0p0p1e1e1e172d1i1n1l1q1h1d1q1t0q1c1m1d211t1u1l1u1l1h1i1t1g271f1c1i0u0z0u1e1e1i1e1j1a1k1e0t1e1i0p0p1e0q2b1j1i1k1k0z160y1i1b20191b170u0o0u1e0k0t1e1e1e1e0o1e1i220z171e161i0x1e11111i1k1k0p1i111117262928171i1i1i1i1i1i2a1l1h1h1h1h0q0q0q0q1s1t1u1u1u1u1u1e1u1t1t1t1t1c1m1m1e1e1e1e1e1e261a1e1e1e1e0p0p0p0p1i1j1i1i1i1i1i1e1i1i1i1i1i1b1k1b0a0k1c280p0p17172n1e1j1j1j1j1n1k1b1a1y1i1j';
export const semibold =
  '0k0w1c1f1f2c1s0s0w0w181f0s0w0s0y1f1f1f1f1f1f1f1f1f1f0s0s1f1f1f182g1k1o1m1r1i1f1r1u0s1d1o1e231u1v1m1v1n1j1j1u1i281i1e1i0w0y0w1f1e1j1g1k1a1k1f0w1g1k0q0q1g0r2c1k1j1k1k1117101k1e231c1e180w0q0w1f0k0w1f1f1f1f0q1f1j230z1a1f181j0z1f11111j1m1o0s1j11111a282b29181k1k1k1k1k1k2b1m1i1i1i1i0s0s0s0s1t1u1v1v1v1v1v1f1v1u1u1u1u1e1o1o1g1g1g1g1g1g261a1f1f1f1f0q0q0q0q1j1k1j1j1j1j1j1f1j1k1k1k1k1e1k1e0a0k1c280s0s1c1c2o1f1j1j1j1j1p1m1e1b201j1k';
