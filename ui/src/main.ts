import { mount } from 'svelte';
import App from './App.svelte';
import './lib/look.css';

const target = document.getElementById('app');
if (!target) throw new Error('index.html has no #app to draw into');

mount(App, { target });
