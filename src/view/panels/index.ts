/** The panels of the app, handed to its shell. */
import './common/common.css';
import './places/places.css';

export * from './bar/TopBar';
export * from './common/layout';
export * from './machine/DropZone';
export * from './parts/PartsList';
export * from './places/PlaceContent';
export * from './places/registry';
export * from './shell/Announcer';
export * from './shell/Boundary';
export * from './shell/LoadingNotice';
export * from './shell/PhoneSheet';
export * from './shell/SidePanel';
export * from './shot/ShotClock';
export * from './stage-tools/SheetFrame';
export * from './stage-tools/StageFoot';
export * from './stage-tools/StageTools';
export * from './teardown/TeardownStrip';
export * from './tour/FirstSteps';
export * from './views/StageLegend';
