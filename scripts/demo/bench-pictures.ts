import { paper } from './paper.ts';

const width = 1200;
const height = 800;

/** A model held on the rail of a thrust rig, with scale and clock. */
export function thrustRigPicture(): string {
  return paper(
    width,
    height,
    `<text x="60" y="70" class="title">The thrust rig</text>
<rect x="80" y="560" width="1040" height="28" class="wood"/><rect x="150" y="588" width="26" height="130" class="wood"/><rect x="1024" y="588" width="26" height="130" class="wood"/>
<path d="M250 520H960" stroke="#2f2a26" stroke-width="5"/><circle cx="330" cy="537" r="15" class="metal"/><circle cx="470" cy="537" r="15" class="metal"/><circle cx="780" cy="537" r="15" class="metal"/>
<path d="M262 356C300 336 420 330 640 338L900 352L905 366L640 388C420 398 300 392 262 372Z" fill="#e9d9b4" stroke="#2f2a26" stroke-width="2.4"/>
<path d="M300 356Q580 344 850 361M300 370Q580 380 850 363" class="motor" fill="none"/>
<path d="M400 330L640 318L648 334L402 345Z" fill="#c7d3cf" stroke="#2f2a26" stroke-width="2"/>
<path d="M820 350L842 268L888 268L892 353Z" fill="#c7d3cf" stroke="#2f2a26" stroke-width="2"/>
<path d="M250 196C238 250 240 320 254 362C240 410 238 470 250 532C262 480 266 410 256 364C266 320 262 250 250 196Z" fill="#dcc59a" stroke="#2f2a26" stroke-width="2.2"/><circle cx="256" cy="364" r="9" class="hub"/>
<path d="M420 392V520M720 386V520" stroke="#2f2a26" stroke-width="5"/>
<path d="M960 520H1000" stroke="#a4502c" stroke-width="3"/><rect x="1000" y="478" width="96" height="82" rx="8" class="metal"/><circle cx="1048" cy="518" r="30" fill="#fffdf6" stroke="#2f2a26" stroke-width="2"/><path d="M1048 518L1066 500" stroke="#a4502c" stroke-width="3.5"/>
<circle cx="1080" cy="170" r="56" fill="#fffdf6" stroke="#2f2a26" stroke-width="4"/><path d="M1080 170V128M1080 170L1108 184" stroke="#2f2a26" stroke-width="4" stroke-linecap="round"/><rect x="1070" y="96" width="20" height="18" class="metal"/>
<path d="M210 440H110M110 440l18 -9M110 440l18 9" class="edge"/><text x="88" y="424" class="label">pull</text>
<path d="M560 300L560 250H640" class="thin"/><text x="648" y="257" class="label">skein at 700 turns, in its tube</text>
<path d="M330 552L330 640H390" class="thin"/><text x="398" y="647" class="label">rail on three rollers</text>
<path d="M1000 500H960V450" class="thin"/><text x="890" y="438" class="label">spring scale</text>`,
  );
}

/** A torque meter: a skein on the bench, an arm with a weight, a scale of degrees. */
export function torqueMeterPicture(): string {
  const ticks = Array.from({ length: 13 }, (_, index) => {
    const angle = ((index * 15 + 90) * Math.PI) / 180;
    const inner = index % 3 === 0 ? 158 : 170;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    return `M${(880 - inner * c).toFixed(1)} ${(380 + inner * s).toFixed(1)}L${(880 - 186 * c).toFixed(1)} ${(380 + 186 * s).toFixed(1)}`;
  }).join('');
  return paper(
    width,
    height,
    `<text x="60" y="70" class="title">Unwinding on the torque meter</text>
<rect x="70" y="610" width="1060" height="30" class="wood"/>
<rect x="110" y="330" width="60" height="280" class="wood"/><circle cx="140" cy="380" r="13" class="metal"/><path d="M140 380H196" stroke="#2f2a26" stroke-width="6"/><path d="M196 380q22 -20 22 0t-22 0" fill="none" stroke="#2f2a26" stroke-width="4"/>
${skein(214, 640, 380)}
<path d="M640 380H880" stroke="#2f2a26" stroke-width="7"/><rect x="690" y="352" width="34" height="258" class="wood"/><rect x="784" y="352" width="34" height="258" class="wood"/>
<circle cx="880" cy="380" r="192" fill="#fffdf6" stroke="#2f2a26" stroke-width="3"/><path d="${ticks}" class="thin"/>
<path d="M880 380L1012 502" stroke="#a4502c" stroke-width="6" stroke-linecap="round"/><circle cx="1012" cy="502" r="19" fill="#a4502c" stroke="#2f2a26" stroke-width="2.5"/><circle cx="880" cy="380" r="14" class="metal"/>
<path d="M140 330V250" class="thin"/><text x="80" y="238" class="label">winder hook, 20 turns at a time</text>
<path d="M430 420V500" class="thin"/><text x="330" y="528" class="label">12 strands, 740 mm</text>
<text x="722" y="316" class="label">wire and arm</text>
<text x="70" y="706" class="label">Read from wound to slack: what the air gets is the way back.</text>`,
  );
}

/** Four pins on one string: side view of one nose, with its neighbours beyond. */
export function releasePicture(): string {
  const nose = (x: number, y: number, size: number, shade: string): string =>
    `<g transform="translate(${x} ${y}) scale(${size})"><path d="M0 -34H250C262 -34 268 -16 268 0C268 16 262 34 250 34H0Z" fill="${shade}" stroke="#2f2a26" stroke-width="2.4"/><path d="M0 -10Q120 -18 214 0Q120 18 0 10" class="motor" fill="none"/><path d="M214 0H318" stroke="#2f2a26" stroke-width="6"/><path d="M312 -150C300 -92 302 -40 314 -6C302 40 300 92 312 150C330 92 332 40 320 4C332 -40 330 -92 312 -150Z" fill="#dcc59a" stroke="#2f2a26" stroke-width="2.2"/><circle cx="317" cy="0" r="9" class="hub"/><path d="M286 -58V52" stroke="#2f2a26" stroke-width="6" stroke-linecap="round"/><circle cx="286" cy="-66" r="9" fill="none" stroke="#2f2a26" stroke-width="4"/></g>`;
  return paper(
    width,
    height,
    `<text x="60" y="70" class="title">Four pins, one string</text>
${nose(700, 300, 0.62, '#efe6cf')}${nose(560, 345, 0.74, '#ece0c4')}${nose(400, 405, 0.88, '#e9d9b4')}${nose(200, 490, 1.05, '#e6d3a6')}
<path d="M500 421Q560 350 652 347Q720 300 772 296Q830 262 877 259Q960 220 1060 150" fill="none" stroke="#a4502c" stroke-width="4"/><path d="M1060 150l-22 2M1060 150l-10 20" stroke="#a4502c" stroke-width="4"/>
<text x="930" y="138" class="label">one pull</text>
<path d="M500 545L470 660" class="thin"/><text x="330" y="690" class="label">pin through hook and block: 2 mm wire, polished</text>
<path d="M330 232L552 364" class="thin"/><text x="70" y="220" class="label">slack of the string: the same to a millimetre</text>`,
  );
}

/** A braided skein between winder and peg, and its strands counted in section. */
export function skeinPicture(): string {
  const strands = Array.from({ length: 10 }, (_, index) => {
    const column = index % 5;
    const row = Math.floor(index / 5);
    return `<rect x="${880 + column * 44}" y="${470 + row * 52}" width="34" height="12" transform="rotate(${(index * 37) % 50} ${897 + column * 44} ${476 + row * 52})" fill="#d8a26a" stroke="#2f2a26" stroke-width="1.8"/><text x="${897 + column * 44}" y="${512 + row * 52}" text-anchor="middle" style="font-size:15px">${index + 1}</text>`;
  }).join('');
  return paper(
    width,
    height,
    `<text x="60" y="70" class="title">One motor, made up</text>
<path d="M120 250h70q26 0 26 24t-26 24h-14" fill="none" stroke="#2f2a26" stroke-width="7"/><rect x="70" y="226" width="64" height="48" rx="8" class="metal"/>
${skein(214, 980, 272)}
<circle cx="996" cy="272" r="22" class="metal"/><circle cx="996" cy="272" r="8" fill="#f8f3e7" stroke="#2f2a26" stroke-width="2"/>
<path d="M214 360H980M214 348V372M980 348V372" class="thin"/><text x="520" y="394" text-anchor="middle" class="label">made-up length: slack, untwisted, end to end</text>
<text x="80" y="214" class="label">winder</text><text x="966" y="228" class="label">peg</text>
<circle cx="990" cy="522" r="136" fill="#fffdf6" stroke="#2f2a26" stroke-width="2.4"/>${strands}<path d="M870 460L760 300" class="thin"/>
<text x="80" y="500" class="label">Ten strands of 1/8 in strip:</text><text x="80" y="536" class="label">a loop of 95 in, laid in five;</text><text x="80" y="572" class="label">count at the hook, never from memory.</text>
<text x="80" y="640" class="label">Weigh it dry. Then lubricate.</text>`,
  );
}

/** The club's mark: a spool with its thread running off. */
export function logoPicture(): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 256 256" width="256" height="256">
<rect x="60" y="36" width="136" height="28" rx="8" fill="#7a3e2a"/><rect x="60" y="192" width="136" height="28" rx="8" fill="#7a3e2a"/>
<rect x="84" y="64" width="88" height="128" fill="#d8a26a"/>
<path d="M84 84L172 74M84 104L172 94M84 124L172 114M84 144L172 134M84 164L172 154M84 184L172 174" stroke="#7a3e2a" stroke-width="7"/>
<path d="M172 114C220 110 236 140 212 158S196 214 248 214" fill="none" stroke="#7a3e2a" stroke-width="7" stroke-linecap="round"/></svg>`;
}

/** A skein as five strands that wind about each other. */
function skein(from: number, to: number, y: number): string {
  return Array.from({ length: 5 }, (_, strand) => {
    const points: string[] = [];
    for (let x = from; x <= to; x += 6) {
      const share = (x - from) / (to - from);
      const slim = Math.min(1, share / 0.06, (1 - share) / 0.06);
      const across = Math.sin(share * 34 + (strand * 2 * Math.PI) / 5) * 17 * slim;
      points.push(`${x} ${(y + across).toFixed(1)}`);
    }
    return `<path d="M${points.join('L')}" fill="none" stroke="${strand % 2 === 0 ? '#c98d52' : '#a4502c'}" stroke-width="4.5"/>`;
  }).join('');
}
