/**
 * A machine, or parts of it, as one binary glTF 2.0 file (ISO/IEC 12113): metres, y up, the machine's front towards +z as
 * that standard wants it. One mesh a kind, shared by all parts of it; units of several parts are nodes with their parts
 * under them; surfaces only, no lines.
 */
import type { MachineDocument } from '../document';
import { SURFACES } from '../geometry';
import type { Finish, Part } from '../machine';

export interface GltfRequest {
  readonly document: Pick<MachineDocument, 'machine' | 'solids'>;
  /** Part ids; parts without a body are left out. They stand where they stand in the assembled machine. */
  readonly partIds: readonly string[];
  readonly names: GltfNames;
}

export interface GltfNames {
  /** Of the whole file. */
  readonly title: string;
  readonly kind: (kind: string) => string;
  readonly part: (partId: string) => string;
  readonly unit: (unitId: string) => string;
  readonly material: (material: string, finish: Finish) => string;
}

const ARRAY_BUFFER = 34962;
const ELEMENT_ARRAY_BUFFER = 34963;
const FLOAT = 5126;
const UNSIGNED_SHORT = 5123;
const UNSIGNED_INT = 5125;
const JSON_CHUNK = 0x4e4f534a;
const BIN_CHUNK = 0x004e4942;
/** A half turn about y: the machine looks along -z, glTF's front is +z. */
const HALF_TURN = [0, 1, 0, 0];

/** A name that no other has: the second of a kind of name gets a number. */
function namer(): (wanted: string) => string {
  const taken = new Set<string>();
  return (wanted) => {
    let name = wanted;
    for (let n = 2; taken.has(name); n++) name = `${wanted} (${n})`;
    taken.add(name);
    return name;
  };
}

interface Node {
  name: string;
  mesh?: number;
  children?: number[];
  rotation?: readonly number[];
  translation?: readonly number[];
  extras?: Readonly<Record<string, string | number>>;
}

/** The file's bytes. */
export function machineGlb({ document, partIds, names }: GltfRequest): Uint8Array<ArrayBuffer> {
  const { machine, solids } = document;
  const wanted = new Set(partIds);
  const parts = machine.parts.filter((p) => wanted.has(p.id) && (solids[p.kind]?.length ?? 0) > 0);
  const data = newBuffer();
  const nodeName = namer();
  const meshName = namer();
  const materialName = namer();
  const materials: object[] = [];
  const materialOf = new Map<string, number>();
  const meshes: object[] = [];
  const meshOf = new Map<string, number>();

  const material = (id: string, finish: Finish): number => {
    const key = `${id}/${finish}`;
    let number = materialOf.get(key);
    if (number === undefined) {
      materialOf.set(key, (number = materials.length));
      const { colour, roughness, metalness } = SURFACES[finish];
      materials.push({
        name: materialName(names.material(id, finish)),
        pbrMetallicRoughness: {
          baseColorFactor: [...linear(colour), 1],
          metallicFactor: metalness,
          roughnessFactor: roughness,
        },
      });
    }
    return number;
  };
  const mesh = (kind: string): number => {
    let number = meshOf.get(kind);
    if (number === undefined) {
      meshOf.set(kind, (number = meshes.length));
      const primitives = solids[kind]!.map((body) => ({
        attributes: {
          POSITION: data.vectors(body.mesh.positions, true),
          NORMAL: data.vectors(unitNormals(body.mesh.normals), false),
        },
        indices: data.numbers(body.mesh.indices, body.mesh.positions.length / 3),
        material: material(body.material ?? machine.kinds[kind]?.material ?? '', body.finish),
        extras: { body: body.name },
      }));
      meshes.push({ name: meshName(names.kind(kind)), primitives });
    }
    return number;
  };

  const nodes: Node[] = [{ name: nodeName(names.title), rotation: HALF_TURN, children: [] }];
  const groups = new Map<string, number>();
  const partNode = (part: Part): number => {
    const { position_m, rotation } = part.pose;
    nodes.push({
      name: nodeName(names.part(part.id)),
      mesh: mesh(part.kind),
      translation: [...position_m],
      rotation: unitQuaternion(rotation),
      extras: { id: part.id, item: machine.kinds[part.kind]?.item ?? 0 },
    });
    return nodes.length - 1;
  };
  const size = new Map(machine.units.map((unit) => [unit.id, unit.partIds.length]));
  for (const part of parts) {
    let above = 0;
    if ((size.get(part.unit) ?? 1) > 1 && parts.length > 1) {
      const known = groups.get(part.unit);
      if (known === undefined) {
        nodes.push({ name: nodeName(names.unit(part.unit)), children: [], extras: { id: part.unit } });
        above = nodes.length - 1;
        groups.set(part.unit, above);
        nodes[0]!.children!.push(above);
      } else above = known;
    }
    nodes[above]!.children!.push(partNode(part));
  }
  if (nodes[0]!.children!.length === 0) delete nodes[0]!.children;
  return glb(
    {
      asset: { version: '2.0', generator: 'Drumbench' },
      scene: 0,
      scenes: [{ name: names.title, nodes: [0] }],
      nodes,
      ...(meshes.length === 0
        ? {}
        : {
            meshes,
            materials,
            accessors: data.accessors,
            bufferViews: data.views,
            buffers: [{ byteLength: data.length() }],
          }),
    },
    data.chunks,
    data.length(),
  );
}

/** Bytes of the surfaces of these parts, without names: within a few per cent of the file's size. */
export function glbSize({ document: { machine, solids }, partIds }: Omit<GltfRequest, 'names'>): number {
  const wanted = new Set(partIds);
  const parts = machine.parts.filter((p) => wanted.has(p.id));
  let bytes = 250 * parts.length;
  for (const kind of new Set(parts.map((p) => p.kind)))
    for (const { mesh } of solids[kind] ?? [])
      bytes +=
        2 * mesh.positions.byteLength +
        mesh.indices.length * (mesh.positions.length / 3 > 65535 ? 4 : 2) +
        700;
  return bytes;
}

function newBuffer() {
  const chunks: Uint8Array[] = [];
  const views: object[] = [];
  const accessors: object[] = [];
  let at = 0;
  const put = (bytes: ArrayBufferView, target: number): number => {
    chunks.push(new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    views.push({ buffer: 0, byteOffset: at, byteLength: bytes.byteLength, target });
    at += bytes.byteLength;
    const rest = (4 - (at % 4)) % 4;
    if (rest > 0) chunks.push(new Uint8Array(rest));
    at += rest;
    return views.length - 1;
  };
  return {
    chunks,
    views,
    accessors,
    length: () => at,
    vectors(values: Float32Array, bounds: boolean): number {
      const min = [Infinity, Infinity, Infinity];
      const max = [-Infinity, -Infinity, -Infinity];
      if (bounds)
        values.forEach((value, i) => {
          min[i % 3] = Math.min(min[i % 3]!, value);
          max[i % 3] = Math.max(max[i % 3]!, value);
        });
      const view = put(values, ARRAY_BUFFER);
      accessors.push({
        bufferView: view,
        componentType: FLOAT,
        count: values.length / 3,
        type: 'VEC3',
        ...(bounds ? { min, max } : {}),
      });
      return accessors.length - 1;
    },
    numbers(values: Uint32Array, vertices: number): number {
      const small = vertices <= 65535;
      const view = put(small ? Uint16Array.from(values) : values, ELEMENT_ARRAY_BUFFER);
      accessors.push({
        bufferView: view,
        componentType: small ? UNSIGNED_SHORT : UNSIGNED_INT,
        count: values.length,
        type: 'SCALAR',
      });
      return accessors.length - 1;
    },
  };
}

function glb(json: object, chunks: readonly Uint8Array[], length: number): Uint8Array<ArrayBuffer> {
  const raw = new TextEncoder().encode(JSON.stringify(json));
  const text = new Uint8Array(raw.length + ((4 - (raw.length % 4)) % 4)).fill(0x20);
  text.set(raw);
  const total = 12 + 8 + text.length + (length > 0 ? 8 + length : 0);
  const out = new Uint8Array(total);
  const view = new DataView(out.buffer);
  const words = [0x46546c67, 2, total, text.length, JSON_CHUNK];
  words.forEach((word, i) => view.setUint32(4 * i, word, true));
  out.set(text, 20);
  if (length === 0) return out;
  let at = 20 + text.length;
  view.setUint32(at, length, true);
  view.setUint32(at + 4, BIN_CHUNK, true);
  at += 8;
  for (const chunk of chunks) {
    out.set(chunk, at);
    at += chunk.length;
  }
  return out;
}

/** sRGB as people write it (#RRGGBB) in linear shares (IEC 61966-2-1). */
function linear(hex: string): number[] {
  return [1, 3, 5].map((k) => {
    const c = parseInt(hex.slice(k, k + 2), 16) / 255;
    return Number((c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4).toFixed(5));
  });
}

function unitNormals(normals: Float32Array): Float32Array {
  const out = new Float32Array(normals.length);
  for (let i = 0; i < normals.length; i += 3) {
    const l = Math.hypot(normals[i]!, normals[i + 1]!, normals[i + 2]!);
    // a corner of slivers alone has no direction of its own
    if (l === 0) out[i + 1] = 1;
    else for (let k = 0; k < 3; k++) out[i + k] = normals[i + k]! / l;
  }
  return out;
}

const unitQuaternion = (q: readonly number[]): number[] => {
  const l = Math.hypot(...q);
  return q.map((v) => v / l);
};
