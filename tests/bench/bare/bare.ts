/**
 * The baseline of the frame bench: the app's own geometry, materials and light, half exploded, drawn by a plain loop
 * without React, balloons or anything that follows a store. Turned by the same controls.
 */
import { NeutralToneMapping, PerspectiveCamera, Scene, Vector3, WebGLRenderer } from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { explodeOffsetsAt } from '../../../src/core/assembly';
import { loadShipped } from '../../../src/edge/content';
import { cameraRig, type Controls } from '../../../src/view/scene/camera/camera-rig';
import { viewDirection } from '../../../src/view/scene/camera/views';
import { lighting } from '../../../src/view/scene/light/lighting';
import { shownReach, sphereOf } from '../../../src/view/scene/machine/bounds';
import { screenSize } from '../../../src/view/scene/machine/edge-material';
import { machineView } from '../../../src/view/scene/machine/machine-view';
import { writePoses } from '../../../src/view/scene/machine/poses';
import { writeShown } from '../../../src/view/scene/machine/visibility';
import { STAGE_PALETTES } from '../../../src/view/scene/palette';
import { newStats, readInfo } from '../../../src/view/scene/stats';
import { TIERS } from '../../../src/view/scene/tier';

const asked = new URLSearchParams(location.search);
const [width, height] = [Number(asked.get('width')), Number(asked.get('height'))];
const explode = 0.5;

const machine = await loadShipped(() => undefined);
const canvas = document.querySelector('canvas')!;
const look = TIERS.low;
const gl = new WebGLRenderer({ canvas, antialias: look.antialias, stencil: false });
gl.setSize(width, height);
gl.toneMapping = NeutralToneMapping;
screenSize.value.set(width, height);

const view = machineView(machine, look.fine);
const { table } = view;
// As the app opens: every option as the machine file has it, nothing hidden.
writeShown(table, {
  hiddenParts: new Set(),
  ghostedParts: new Set(),
  isolatedParts: null,
  showContext: false,
  optionsOn: Object.fromEntries(Object.entries(machine.machine.options).map(([id, { on }]) => [id, on])),
});
const offsets = new Float32Array(3 * table.count);
explodeOffsetsAt(machine.explode, explode, offsets);
writePoses(table, {
  teardown: new Float32Array(4 * table.count),
  explode: offsets,
  turnAxes: null,
  drumAngle_rad: 0,
  exciterAngle_rad: 0,
});
view.write(-1, -1);

const scene = new Scene();
const light = lighting();
light.look(scene, STAGE_PALETTES.paper, look.shadows);
scene.add(view.group, light.group);
const camera = new PerspectiveCamera(27, width / height, 0.1, 60);
const controls = new OrbitControls(camera, canvas);
const points = shownReach(table);
const { centre, radius } = sphereOf(points) ?? { centre: new Vector3(), radius: 2 };
const bounds = { centre, radius, ground: -machine.machine.drumRadius_m };
const rig = cameraRig(camera, controls as unknown as Controls);
const margins = { left: 0.08, right: 0.08, top: 0.06, bottom: 0.06 };
rig.frame(points, viewDirection('home', camera.aspect, explode), margins, true, true);
rig.advance(1 / 60, bounds);
camera.updateMatrixWorld();
light.update(gl, scene, bounds);
view.thin(camera.position, height / (2 * Math.tan((27 * Math.PI) / 360)));

const stats = newStats();
window.__drumbench = { stats };
let asking = false;
const draw = (): void => {
  asking = false;
  gl.render(scene, camera);
  readInfo(stats, gl, { calls: 0, triangles: 0 });
  stats.frames++;
};
const ask = (): void => {
  if (!asking) requestAnimationFrame(draw);
  asking = true;
};
controls.addEventListener('change', ask);
ask();
