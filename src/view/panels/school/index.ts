import './school.css';

export * from './SchoolContent';
export * from './SchoolNotice';
