import { Chart } from 'chart.js';
import zoomPlugin from 'chartjs-plugin-zoom';

export const registerGestures = (): void => Chart.register(zoomPlugin);
